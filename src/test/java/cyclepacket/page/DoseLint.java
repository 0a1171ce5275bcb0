package cyclepacket.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds error-prone dose forms: the Joint Commission's Do Not Use list (IM.02.02.01) and the ISMP list of error-prone
 * abbreviations, symbols and dose designations (2021, 2024).
 */
final class DoseLint {
    private static final Map<String, Pattern> BAD = new LinkedHashMap<>();

    static {
        add("unit-U", "(?<![\\w.])\\d[\\d,.]*\\s*[Uu](?![A-Za-z])");
        add("IU", "(?<![A-Za-z])[Ii]\\.?[Uu]\\.?(?![A-Za-z])");
        add("UI", "(?<![A-Za-z])U\\.?I\\.?(?![A-Za-z])");
        add("QD", "(?<![A-Za-z])[Qq]\\.?[Dd]\\.?(?![A-Za-z])");
        add("QOD", "(?<![A-Za-z])[Qq]\\.?[Oo]\\.?[Dd]\\.?(?![A-Za-z])");
        add("trailing-zero", "(?<![\\d.,])\\d[\\d,]*\\.\\d*0(?=\\s*(?:units?|mg|mcg|micrograms?|mL|g)\\b)");
        add("naked-decimal", "(?<!\\d)\\.\\d");
        add("no-comma", "(?<![\\d,.])\\d{4,}(?=\\s*(?:units?|mg|mcg|micrograms?|mL)\\b)");
        add("run-together", "\\d(?:mg|mcg|mL|ml|g|units?)\\b");
        add("unit-dot", "\\b(?:mg|mcg|mL)\\.(?=\\s+[a-z0-9])");
        add("micro", "[\\u00b5\\u03bc]g|\\bug\\b");
        add("ml-case", "(?<![A-Za-z])ml\\b");
        add("cc", "\\d\\s?cc\\b");
        add("subcut", "(?<![A-Za-z])(?:SC|SQ|sq|[Ss]ub\\s?-?[Qq])(?![A-Za-z])");
        add("hs", "(?<![A-Za-z])(?:HS|hs|[Qq][Hh][Ss])(?![A-Za-z])");
        add("times", "(?<![A-Za-z])(?:BID|TID|TIW|BIW|bid|tid)(?![A-Za-z])");
        add("at-amp", "\\s[@&+]\\s");
        add("gtlt", "[<>]\\s?\\d");
        add("slash-dose", "\\d\\s*(?:units?|mg|mL)\\s*/");
        add("fraction", "[\\u00bc-\\u00be]");
        add("million", "\\d\\s?(?:MM|M|K)(?![A-Za-z])");
        add("twice-daily", "(?i)\\b(?:twice daily|nightly|every \\d+ hours)\\b");
    }

    private DoseLint() {}

    private static void add(String key, String pattern) {
        BAD.put(key, Pattern.compile(pattern));
    }

    /** Each bad form found, with its key and the words around it. */
    static List<String> find(String text) {
        String spaced = text.replace('\u00a0', ' ');
        List<String> found = new ArrayList<>();
        BAD.forEach((key, pattern) -> {
            for (Matcher match = pattern.matcher(spaced); match.find(); ) {
                int from = Math.max(0, match.start() - 20);
                found.add(key + ": " + spaced.substring(from, Math.min(spaced.length(), match.end() + 20)));
            }
        });
        return found;
    }
}

package cyclepacket.wording;

import cyclepacket.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Finds hard words that a document uses and does not explain. */
public final class TermCheck {
    private TermCheck() {}

    /** One finding a word, at its first use. */
    public static List<Finding> of(List<Passage> document, LanguageRules rules) {
        List<Finding> found = new ArrayList<>();
        for (Map.Entry<String, String> term : rules.terms().entrySet()) {
            if (!term.getValue().isEmpty() && isExplained(document, term.getValue())) {
                continue;
            }
            Pattern word = Pattern.compile(
                    "(?<![\\p{L}-])" + term.getKey() + "(?![\\p{L}])", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
            document.stream()
                    .filter(passage -> word.matcher(plain(passage.text())).find())
                    .findFirst()
                    .ifPresent(passage -> found.add(finding(passage, word, term.getValue())));
        }
        return found;
    }

    private static boolean isExplained(List<Passage> document, String explanation) {
        return document.stream()
                .anyMatch(passage -> Stream.of(explanation.split("\\|")).anyMatch(plain(passage.text())::contains));
    }

    private static Finding finding(Passage passage, Pattern word, String explanation) {
        Matcher used = word.matcher(plain(passage.text()));
        String words = used.find() ? used.group() : "";
        return Finding.warn(
                "WORDING-TERM",
                passage.places().apply(words),
                "\"" + words + "\" is a hard word that nothing here explains",
                explanation.isEmpty()
                        ? "use an everyday word"
                        : "explain it, for example: " + explanation.split("\\|")[0]);
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace("*", "");
    }
}

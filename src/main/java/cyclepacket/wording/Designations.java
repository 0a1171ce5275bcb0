package cyclepacket.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The error-prone forms that hold in every language: the Joint Commission's "Do Not Use" list (IM.02.02.01, 2018) and the
 * ISMP list of error-prone abbreviations, symbols and dose designations (2021, 2024). A language's folder adds its own.
 */
public final class Designations {
    private static final String AMOUNT = "(?:units?|unidades|unidad|mg|mcg|micrograms?|microgramos?|mL)\\b";

    private Designations() {}

    /** Forms on the Joint Commission's list first. */
    public static List<Designation> all() {
        List<Designation> all = new ArrayList<>(doNotUse());
        all.addAll(amounts());
        all.addAll(shortForms());
        all.addAll(signs());
        return List.copyOf(all);
    }

    private static List<Designation> doNotUse() {
        return List.of(
                never("unit-U", "(?<![\\w.])\\d[\\d,.]*\\s*[Uu](?![\\p{L}])", "unit or units, in full"),
                never("IU", "(?<![\\p{L}])[Ii]\\.?[Uu]\\.?(?![\\p{L}])", "units, in full"),
                never("QD", "(?<![\\p{L}])(?:[Qq]\\.?[Dd]\\.?|[Oo]\\.[Dd]\\.|OD)(?![\\p{L}])", "the time of day"),
                never("QOD", "(?<![\\p{L}])[Qq]\\.?[Oo]\\.?[Dd]\\.?(?![\\p{L}])", "each date"),
                never(
                        "trailing-zero",
                        "(?<![\\d.,])\\d[\\d,]*\\.\\d*0(?=\\s*(?:" + AMOUNT + "|g\\b))",
                        "no zero at the end"),
                never("naked-decimal", "(?<![\\d.])\\.\\d", "a zero before the point"),
                never("ms", "(?<![\\p{L}])(?:MS|MSO4|MgSO4)(?![\\p{L}])", "the name in full"));
    }

    private static List<Designation> amounts() {
        return List.of(
                form("UI", "(?<![\\p{L}])U\\.?I\\.?(?![\\p{L}])", "unidades, in full"),
                form("run-together", "\\d(?:mg|mcg|mL|ml|g|units?|unidades)\\b", "a space between number and unit"),
                form("name-dose", "\\p{L}{4,}\\d[\\d.,]*\\s?" + AMOUNT, "a space between name and amount"),
                form("unit-dot", "\\b(?:mg|mcg|mL)\\.(?=\\s+[a-z0-9])", "the unit without a dot"),
                form("micro", "[\\u00b5\\u03bc]g|\\bug\\b", "micrograms, in full"),
                form("nano", "(?<![\\p{L}])(?:ng|nanog)(?![\\p{L}])", "nanograms, in full"),
                form("cc", "\\d\\s?cc\\b", "mL"),
                form("ml-case", "(?<![\\p{L}])ml\\b|\\d\\s?l\\b", "mL or L"),
                form("million", "\\d\\s?(?:MM|M|K)(?![\\p{L}])", "thousand or million, in full"),
                form("slash-dose", "\\d\\s*" + AMOUNT + "\\s*/", "per, in full"),
                form("fraction", "[\\u00bc-\\u00be]", "half, in full"));
    }

    private static List<Designation> shortForms() {
        return List.of(
                form("subcut", "(?<![\\p{L}])(?:SC|SQ|sq|[Ss]ub\\s?-?[Qq])(?![\\p{L}])", "under the skin"),
                form("ij-in", "(?<![\\p{L}])(?:IJ|IN|NAS)(?![\\p{L}])", "injection, or in the nose"),
                form("hs", "(?<![\\p{L}])(?:HS|hs|[Qq][Hh][Ss]|qn|BT|[Nn]ightly)(?![\\p{L}])", "the time of day"),
                form(
                        "times",
                        "(?<![\\p{L}])(?:BID|TID|TIW|BIW|bid|tid|q\\d+(?:PM|AM|[dh])|x\\d+d)(?![\\p{L}])",
                        "the times of day"),
                form(
                        "dc-ss-po",
                        "(?<![\\p{L}])(?:D/C|ss|SSI|SSRI|[Pp]er os|p\\.o\\.|PO)(?![\\p{L}])",
                        "the words in full"),
                form(
                        "abbrev",
                        "(?<![\\p{L}])(?:[hH]CG|FSH|[hH]MG|GnRH|P4|E2|LH|AMH|IVF|FIV|OHSS|IM|SL)(?![\\p{L}\\d])",
                        "the name in full"));
    }

    private static List<Designation> signs() {
        return List.of(
                form("at-amp", "\\s[@&+]\\s", "at, and, plus"),
                form("gtlt", "[<>\\u2264\\u2265]\\s?=?\\s?\\d", "more than, less than, at least, at most"),
                form("hour-deg", "\\d\\s?[\\u00b0\\u00ba](?!\\s?[CF])", "hours, in full"),
                form("slashed-zero", "0\\u0338|[\\u2205\\u00d8]", "a plain zero"));
    }

    private static Designation never(String key, String bad, String instead) {
        return new Designation(key, Pattern.compile(bad), true, instead);
    }

    private static Designation form(String key, String bad, String instead) {
        return new Designation(key, Pattern.compile(bad), false, instead);
    }
}

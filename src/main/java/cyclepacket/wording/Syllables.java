package cyclepacket.wording;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Counts syllables by rules of thumb; a figure or a short form is one word of one syllable, as Flesch counts them. */
public enum Syllables {
    ENGLISH {
        @Override
        public int of(String word) {
            String plain = word.toLowerCase(Locale.ROOT).replaceAll("[^a-z-]", "");
            int count = 0;
            for (String part : plain.split("-")) {
                count += part.isEmpty() ? 0 : Math.max(1, english(part));
            }
            return Math.max(1, count);
        }
    },
    SPANISH {
        /** Each group of vowels is one, and one more between two strong vowels or beside a weak one with an accent. */
        @Override
        public int of(String word) {
            String plain = word.toLowerCase(Locale.ROOT).replaceAll("(?<=q|g)u(?=[eéií])", "");
            int count = 0;
            for (Matcher group = SPANISH_VOWELS.matcher(plain); group.find(); ) {
                count += 1 + (int) HIATUS.matcher(group.group()).results().count();
            }
            return Math.max(1, count);
        }
    };

    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");
    private static final Pattern APART =
            Pattern.compile("(?<=[dv])ia(?=l)|ua(?=ry)|(?<=[lps])ie(?=rs?$)|(?<=r)ea(?=s$)|^rea(?=ct)");

    /** Words of the pages that no rule fits. */
    private static final Map<String, Integer> ODD = Map.of(
            "anyone",
            3,
            "evening",
            2,
            "evenings",
            2,
            "every",
            2,
            "fluid",
            2,
            "maybe",
            2,
            "something",
            2,
            "wednesday",
            2);

    private static final Pattern SPANISH_VOWELS = Pattern.compile("[aeiouáéíóúü]+|(?<![aeiouáéíóú])y(?![aeiouáéíóú])");
    private static final Pattern HIATUS = Pattern.compile("[aeoáéó](?=[aeoáéó])|[aeoáéó](?=[íú])|[íú](?=[aeoáéó])");

    /** At least one. */
    public abstract int of(String word);

    /** Rules first: a silent e at the end, -ed and -es that are not sounded, a last -le or -re that is, two vowels apart. */
    private static int english(String part) {
        Integer known = ODD.get(part);
        if (known != null) {
            return known;
        }
        String sounded = part.replaceFirst("(?<=[^aeiouy])e$", "")
                .replaceFirst("(?<=[^aeioudty])ed$", "d")
                .replaceFirst("(?<=[^aeiouylscxzgh]|[aeiouy]l|th)es$", "s");
        int groups = (int) VOWELS.matcher(sounded).results().count();
        int apart = (int) APART.matcher(sounded).results().count();
        return groups + apart + (part.matches(".*[^aeiouy][lr]es?") && !sounded.endsWith("es") ? 1 : 0);
    }
}

package cyclepacket.page;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The Flesch-Kincaid grade, 0.39 W/S + 11.8 Y/W - 15.59 (Kincaid, Fishburne, Rogers and Chissom, Navy RBR 8-75, 1975).
 * Figures and short forms count as one word of one syllable, as Flesch counts them.
 */
final class FleschKincaid {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}'’.,:-]*");
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

    private FleschKincaid() {}

    static double grade(int words, int sentences, int syllables) {
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    static double ease(int words, int sentences, int syllables) {
        return 206.835 - 1.015 * words / sentences - 84.6 * syllables / words;
    }

    /** The grade of sentences that are given one by one. */
    static double grade(List<String> sentences) {
        int words = 0;
        int syllables = 0;
        for (String sentence : sentences) {
            for (Matcher word = WORD.matcher(sentence); word.find(); ) {
                words++;
                syllables += syllables(word.group());
            }
        }
        return grade(words, sentences.size(), syllables);
    }

    /** Vowel groups, a silent e at the end left out; at least one. */
    static int syllables(String word) {
        String plain = word.toLowerCase(Locale.ROOT).replaceAll("[^a-z-]", "");
        int count = 0;
        for (String part : plain.split("-")) {
            String sounded = part.replaceFirst("(?<=[^aeiouy])e$", "")
                    .replaceFirst("(?<=[^aeioudty])ed$", "d")
                    .replaceFirst("(?<=[^aeiouylscxz])es$", "s");
            int groups = 0;
            for (Matcher vowels = VOWELS.matcher(sounded); vowels.find(); ) {
                groups++;
            }
            if (part.matches(".*[^aeiouy]le")) {
                groups++;
            }
            count += part.isEmpty() ? 0 : Math.max(1, groups);
        }
        return Math.max(1, count);
    }
}

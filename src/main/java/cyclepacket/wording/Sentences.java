package cyclepacket.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Takes running text apart into sentences and words. */
final class Sentences {
    /** A no-break space is no border: it holds {@code 8:30 p.m. (20:30)} together. */
    private static final Pattern BORDER = Pattern.compile("(?<=[.?!:])[\"”]?\\s+");

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}'’.,:-]*");

    private Sentences() {}

    /** Each sentence of a text, in order; a colon ends one too, because a list follows it. */
    static List<String> of(String text) {
        List<String> sentences = new ArrayList<>();
        for (String sentence : BORDER.split(text)) {
            if (!words(sentence).isEmpty()) {
                sentences.add(sentence.strip());
            }
        }
        return sentences;
    }

    static List<String> words(String sentence) {
        return WORD.matcher(sentence).results().map(word -> word.group()).toList();
    }
}

package cyclepacket.wording;

import java.util.List;

/**
 * What the formulas are fed with.
 *
 * @param longWords words of three or more syllables
 */
record Counts(int words, int sentences, int syllables, int longWords) {
    /** By definition of the formula (McLaughlin 1969). */
    private static final int LONG = 3;

    static Counts of(List<String> sentences, Syllables counter) {
        int words = 0;
        int syllables = 0;
        int longWords = 0;
        for (String sentence : sentences) {
            for (String word : Sentences.words(sentence)) {
                int own = counter.of(word);
                words++;
                syllables += own;
                longWords += own >= LONG ? 1 : 0;
            }
        }
        return new Counts(words, sentences.size(), syllables, longWords);
    }
}

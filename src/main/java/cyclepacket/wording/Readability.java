package cyclepacket.wording;

/**
 * Reading formulas on counts alone: words, sentences and syllables above zero, words of three or more syllables.
 *
 * <p>Flesch, J Appl Psychol 1948;32:221. Kincaid, Fishburne, Rogers and Chissom, Navy RBR 8-75, 1975. McLaughlin, J
 * Reading 1969;12:639. Szigriszt-Pazos 1993 with the INFLESZ bands of Barrio-Cantalejo, An Sist Sanit Navar 2008;31:135.
 */
public final class Readability {
    private Readability() {}

    /** School grade in the United States. */
    public static double fleschKincaid(int words, int sentences, int syllables) {
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    /** From 0, hard, to 121.22, the easiest there is. */
    public static double fleschEase(int words, int sentences, int syllables) {
        return 206.835 - 1.015 * words / sentences - 84.6 * syllables / words;
    }

    /** School grade by the regression of the paper. */
    public static double smog(int longWords, int sentences) {
        return 3.1291 + 1.0430 * Math.sqrt(30.0 * longWords / sentences);
    }

    /** School grade by the quick rule for 30 sentences: 3 plus the root of the nearest perfect square, the lower of two. */
    public static int smogQuick(int longWordsInThirty) {
        int root = (int) Math.sqrt(longWordsInThirty);
        int above = (root + 1) * (root + 1) - longWordsInThirty;
        return 3 + (longWordsInThirty - root * root <= above ? root : root + 1);
    }

    /** From 0, very difficult, upward: 55 to 65 is normal, above 65 fairly easy, above 80 very easy. */
    public static double inflesz(int words, int sentences, int syllables) {
        return 206.835 - 62.3 * syllables / words - (double) words / sentences;
    }
}

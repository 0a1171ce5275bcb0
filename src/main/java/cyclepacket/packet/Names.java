package cyclepacket.packet;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Whether two names as written are one person's. */
final class Names {
    /** Longer than any name that a page has room for. */
    private static final int LONGEST = 80;

    private Names() {}

    /** A name has a letter outside its remark in brackets, no control character, and fits a line. */
    static boolean isName(String name) {
        boolean isPlain = name.codePoints().noneMatch(Character::isISOControl);
        return isPlain && name.length() <= LONGEST && !words(name).isEmpty();
    }

    /**
     * Case, order, punctuation, width of letters and a remark in brackets do not make a second person, and neither does an
     * initial for a whole name.
     */
    static boolean areSamePerson(String one, String other) {
        List<String> left = words(one);
        List<String> right = new ArrayList<>(words(other));
        if (left.size() != right.size()) {
            return false;
        }
        for (String word : left) {
            boolean isFound = right.remove(word)
                    || right.stream()
                            .filter(candidate -> isInitial(word, candidate) || isInitial(candidate, word))
                            .findFirst()
                            .map(right::remove)
                            .orElse(false);
            if (!isFound) {
                return false;
            }
        }
        return true;
    }

    private static boolean isInitial(String word, String whole) {
        return word.codePointCount(0, word.length()) == 1 && whole.startsWith(word);
    }

    /** The longer words first, so that an initial is only tried on what whole names leave. */
    private static List<String> words(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFKC).replaceAll("\\(.*?\\)", " ");
        return Arrays.stream(plain.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{M}]+"))
                .filter(word -> !word.isEmpty())
                .sorted((left, right) -> right.length() - left.length())
                .toList();
    }
}

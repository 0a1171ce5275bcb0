package cyclepacket.intake;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.TreeSet;

/** Finds the known name that a misspelt one most likely stands for. */
final class NearestName {
    /** So many letters must stand for each slip; two letters with one changed could be any other two. */
    private static final int SAME_LETTERS_PER_SLIP = 3;

    private static final int MOST_CHOICES = 8;

    private NearestName() {}

    /** The nearest known name, when so few letters differ that it is a likely slip; ties go to the first in the alphabet. */
    static Optional<String> of(String written, Collection<String> known) {
        int most = written.length() / SAME_LETTERS_PER_SLIP;
        int[] own = letters(written);
        return new TreeSet<>(known)
                .stream()
                        // Every letter that one has more is a slip: most names of a long list need no closer look.
                        .filter(name -> Math.abs(name.codePointCount(0, name.length()) - own.length) <= most)
                        .map(name -> new Near(name, distance(own, letters(name))))
                        .filter(near -> near.slips() <= most)
                        .min(Comparator.comparingInt(Near::slips))
                        .map(Near::name);
    }

    private record Near(String name, int slips) {}

    /** A question when a name is near, otherwise the choices. */
    static String mend(String written, Collection<String> known) {
        Optional<String> near = of(written, known);
        if (near.isPresent()) {
            return "did you mean " + near.get() + "?";
        }
        return known.isEmpty() || known.size() > MOST_CHOICES ? "remove it" : choices(known);
    }

    /** The same for words that are few enough to read them all, however many they are. */
    static String mendFromAll(String written, Collection<String> known) {
        return of(written, known).map(near -> "did you mean " + near + "?").orElseGet(() -> choices(known));
    }

    /** The same for the files of a folder; a long list of them is not read out. */
    static String mendFromFolder(String written, Collection<String> known, String folder) {
        return known.size() > MOST_CHOICES && of(written, known).isEmpty()
                ? "look into " + folder + " for the right name"
                : mend(written, known);
    }

    /** For example {@code use one of equal, full-dial-first}. */
    static String choices(Collection<String> known) {
        return (known.size() == 1 ? "use " : "use one of ") + String.join(", ", known);
    }

    /** Letters to add, drop, change or swap with a neighbour; capitals do not count. */
    static int distance(String left, String right) {
        return distance(letters(left), letters(right));
    }

    private static int[] letters(String name) {
        return name.codePoints().map(Character::toLowerCase).toArray();
    }

    private static int distance(int[] a, int[] b) {
        int[][] cost = new int[a.length + 1][b.length + 1];
        for (int i = 0; i <= a.length; i++) {
            for (int j = 0; j <= b.length; j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : step(cost, a, b, i, j);
            }
        }
        return cost[a.length][b.length];
    }

    private static int step(int[][] cost, int[] a, int[] b, int i, int j) {
        int change = cost[i - 1][j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
        int least = Math.min(change, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
        boolean isSwap = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
        return isSwap ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
    }
}

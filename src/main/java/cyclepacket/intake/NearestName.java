package cyclepacket.intake;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
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
        return new TreeSet<>(known)
                .stream()
                        .filter(name -> distance(written, name) <= most)
                        .min(Comparator.comparingInt(name -> distance(written, name)));
    }

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
        List<Integer> a = left.toLowerCase(Locale.ROOT).codePoints().boxed().toList();
        List<Integer> b = right.toLowerCase(Locale.ROOT).codePoints().boxed().toList();
        int[][] cost = new int[a.size() + 1][b.size() + 1];
        for (int i = 0; i <= a.size(); i++) {
            for (int j = 0; j <= b.size(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : step(cost, a, b, i, j);
            }
        }
        return cost[a.size()][b.size()];
    }

    private static int step(int[][] cost, List<Integer> a, List<Integer> b, int i, int j) {
        int change = cost[i - 1][j - 1] + (a.get(i - 1).equals(b.get(j - 1)) ? 0 : 1);
        int least = Math.min(change, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
        boolean isSwap = i > 1
                && j > 1
                && a.get(i - 1).equals(b.get(j - 2))
                && a.get(i - 2).equals(b.get(j - 1));
        return isSwap ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
    }
}

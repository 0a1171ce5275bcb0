package cyclepacket.finding;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Prints findings for a terminal: the place, the sentence and the code, then the line with a caret, then the mend. */
public final class FindingText {
    /** Characters of a source line that are shown; longer lines are cut around the caret. */
    private static final int WIDEST_LINE = 140;

    private static final int KEPT_BEFORE_CARET = 100;

    /** How many findings of one code are printed by {@link #printShort}: enough to see the pattern. */
    static final int MOST_OF_ONE_CODE = 50;

    private FindingText() {}

    /** One block a finding, in the order of the list; every line ends with a line feed. */
    public static String print(List<Finding> findings) {
        StringBuilder out = new StringBuilder();
        findings.forEach(finding -> print(finding, out));
        return out.toString();
    }

    /**
     * The same for a reader: of one code only the first {@value #MOST_OF_ONE_CODE} are printed, and one line after them
     * says how many more there are. No code is ever left out.
     */
    public static String printShort(List<Finding> findings) {
        Map<String, Integer> all = new HashMap<>();
        findings.forEach(finding -> all.merge(finding.code(), 1, Integer::sum));
        Map<String, Integer> seen = new HashMap<>();
        StringBuilder out = new StringBuilder();
        for (Finding finding : findings) {
            int number = seen.merge(finding.code(), 1, Integer::sum);
            if (number <= MOST_OF_ONE_CODE) {
                print(finding, out);
            }
            int more = all.get(finding.code()) - MOST_OF_ONE_CODE;
            if (number == MOST_OF_ONE_CODE && more > 0) {
                out.append("... and ")
                        .append(more)
                        .append(" more   [")
                        .append(finding.code())
                        .append("]\n");
            }
        }
        return out.toString();
    }

    private static void print(Finding finding, StringBuilder out) {
        Place place = finding.place();
        out.append(place.file());
        if (place.isLocated()) {
            out.append(':').append(place.line()).append(':').append(place.column());
        }
        out.append(": ").append(finding.severity().word()).append(": ").append(finding.text());
        out.append("   [").append(finding.code()).append("]\n");
        if (place.isLocated() && !place.sourceLine().isEmpty()) {
            source(place, out);
        }
        out.append("   mend: ").append(finding.mend()).append('\n');
    }

    private static void source(Place place, StringBuilder out) {
        int[] line = place.sourceLine().codePoints().toArray();
        int from = line.length <= WIDEST_LINE ? 0 : Math.max(0, place.column() - 1 - KEPT_BEFORE_CARET);
        int to = Math.min(line.length, from + WIDEST_LINE);
        String cutBefore = from > 0 ? "..." : "";
        String shown = cutBefore + new String(line, from, to - from) + (to < line.length ? "..." : "");
        String number = String.valueOf(place.line());
        int gutter = Math.max(2, number.length());
        out.append("   ")
                .append(" ".repeat(gutter - number.length()))
                .append(number)
                .append(" | ")
                .append(shown);
        out.append('\n');
        out.append("   ").append(" ".repeat(gutter)).append(" | ").append(" ".repeat(cutBefore.length()));
        for (int n = from; n < place.column() - 1; n++) {
            // A tab stays a tab, so that the caret stands under its character however wide tabs are.
            out.append(n < line.length && line[n] == '\t' ? '\t' : ' ');
        }
        out.append("^\n");
    }
}

package cyclepacket.finding;

import java.util.List;

/** Prints findings for a terminal: the place, the sentence and the code, then the line with a caret, then the mend. */
public final class FindingText {
    /** Characters of a source line that are shown; longer lines are cut around the caret. */
    private static final int WIDEST_LINE = 140;

    private static final int KEPT_BEFORE_CARET = 100;

    private FindingText() {}

    /** One block a finding, in the order of the list; every line ends with a line feed. */
    public static String print(List<Finding> findings) {
        StringBuilder out = new StringBuilder();
        findings.forEach(finding -> print(finding, out));
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

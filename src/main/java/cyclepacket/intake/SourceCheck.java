package cyclepacket.intake;

import cyclepacket.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/** What is looked for in the bare text before anything is parsed: encoding, characters that hide, tabs that indent, endless lines. */
final class SourceCheck {
    private static final int REPLACEMENT = 0xFFFD;
    /** In characters, ten times the longest text; every finding carries its line, so an endless one costs for each. */
    private static final int LONGEST_LINE = 2_000;

    private SourceCheck() {}

    static List<Finding> run(Source source, byte[] bytes) {
        List<Finding> found = new ArrayList<>();
        boolean isUtf8 = Source.isUtf8(bytes);
        for (int n = 0; n < source.lines().size(); n++) {
            String line = source.lines().get(n);
            int column = 0;
            for (int c : (Iterable<Integer>) line.codePoints()::iterator) {
                column++;
                Spot spot = new Spot(n + 1, column);
                if (!isUtf8 && c == REPLACEMENT) {
                    found.add(source.stop(
                            "YAML-ENCODING", spot, "this character is not UTF-8", "save the file again as UTF-8"));
                    break;
                }
                if (Characters.isRefused(c)) {
                    found.add(hidden(source, spot, c));
                    break;
                }
            }
            tab(source, n + 1, line, found);
            if (line.length() > LONGEST_LINE) {
                found.add(source.stop(
                        "YAML-LONG-LINE",
                        new Spot(n + 1, line.codePointCount(0, LONGEST_LINE) + 1),
                        "this line is longer than " + LONGEST_LINE + " characters",
                        "give each entry a line of its own"));
            }
        }
        return found;
    }

    static Finding hidden(Source source, Spot spot, int codePoint) {
        return source.stop(
                "TEXT-CONTROL-CHARACTER",
                spot,
                "there is a hidden character here (" + Characters.code(codePoint) + ")",
                "delete it and type the text again");
    }

    private static void tab(Source source, int number, String line, List<Finding> found) {
        int at = 0;
        while (at < line.length() && (line.charAt(at) == ' ' || line.charAt(at) == '\t')) {
            if (line.charAt(at) == '\t' && !line.isBlank()) {
                found.add(source.stop(
                        "YAML-TAB",
                        new Spot(number, at + 1),
                        "this line is indented with a tab",
                        "use spaces, two for each level"));
                return;
            }
            at++;
        }
    }
}

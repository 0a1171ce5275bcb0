package cyclepacket.page;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** Two issues side by side on a screen: one line for each medicine of each day that differs. */
public final class ChangedTable {
    private static final int WIDEST = 88;

    private ChangedTable() {}

    /** @param templates the folder with the wording; every line ends with a line feed; empty when nothing differs */
    public static String of(Path templates, PacketFacts before, PacketFacts now, LocalDate first) {
        Wording wording = Wording.load(templates, now.files().plan().language());
        StringBuilder out = new StringBuilder();
        for (ChangedView.Row row : new ChangedViews(now, Words.of(wording)).rows(before, first)) {
            out.append(row.span().orElse(row.day().full()).replace(AmountWords.NO_BREAK, ' '))
                    .append('\n');
            cells(row.before(), "before", out);
            cells(row.after(), "now", out);
        }
        return out.toString();
    }

    private static void cells(List<ChangedView.Line> lines, String when, StringBuilder out) {
        for (ChangedView.Line line : lines) {
            String text = (line.medicine() + ": " + line.text() + " " + String.join(" ", line.notes()))
                    .replace(AmountWords.NO_BREAK, ' ')
                    .strip();
            String start = String.format(Locale.ROOT, "   %-7s", when);
            StringBuilder row = new StringBuilder(start);
            for (String word : text.split(" ")) {
                if (row.length() > start.length() && row.length() + word.length() >= WIDEST) {
                    out.append(row).append('\n');
                    row = new StringBuilder(" ".repeat(start.length()));
                }
                row.append(row.length() == start.length() ? "" : " ").append(word);
            }
            out.append(row);
            out.append('\n');
        }
    }
}

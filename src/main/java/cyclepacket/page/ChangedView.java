package cyclepacket.page;

import cyclepacket.plan.Medicine;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Revision;
import java.util.List;
import java.util.Optional;

/**
 * What changed since the issue that is thrown away.
 *
 * @param issue the number of the replaced issue
 * @param date the day it was prepared, where that is known
 * @param known whether its stored plan was found
 * @param rows every day from the day of preparing on that is different
 * @param swaps products that were swapped by this issue
 */
public record ChangedView(String issue, Optional<String> date, boolean known, List<Row> rows, List<Swap> swaps) {
    public ChangedView {
        rows = List.copyOf(rows);
        swaps = List.copyOf(swaps);
    }

    /**
     * One day, or several in a row that changed alike, before and now: one text for each medicine that differs.
     *
     * @param day the first day
     * @param span the first and the last day, for example {@code 29 April to 6 May}; empty for a single day
     */
    public record Row(DayName day, Optional<String> span, List<Line> before, List<Line> after) {
        public Row {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }
    }

    /**
     * One medicine of one day.
     *
     * @param text what to take and when
     * @param notes what it says of new cartridges
     */
    public record Line(String medicine, String text, List<String> notes) {
        public Line {
            notes = List.copyOf(notes);
        }
    }

    /** One product in place of another. */
    public record Swap(String before, String after) {}

    /** The products that the issue of these files puts in place of others. */
    static List<Swap> swaps(PlanFiles files) {
        return files.plan().revised().stream()
                .filter(line -> line.what() == Revision.What.SWAP
                        && line.issue() == files.plan().issue())
                .map(line -> new Swap(
                        name(files, line.of().orElseThrow()),
                        name(files, line.now().orElseThrow())))
                .toList();
    }

    private static String name(PlanFiles files, String medicine) {
        return files.medicine(medicine).map(Medicine::name).orElse(medicine);
    }
}

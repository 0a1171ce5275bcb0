package cyclepacket.page;

import cyclepacket.plan.Plan;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How many empty rows the log has: those that fill one page, or two where one does not hold every injection ahead. By
 * paper and text size, with room for a banner.
 */
final class LogViews {
    private LogViews() {}

    /** @param more how many lines more than usual are said above the rows */
    static LogView of(Plan plan, DoorView door, int more) {
        boolean letter = plan.paper() == Plan.Paper.LETTER;
        int rows = switch (plan.textSize()) {
            case STANDARD -> {
                int onOnePage = (letter ? 24 : 26) - more;
                yield injections(door) <= onOnePage ? onOnePage : letter ? 50 : 54;
            }
            case LARGE -> letter ? 25 : 28;
        };
        return new LogView(
                IntStream.rangeClosed(1, rows).mapToObj(Integer::toString).toList());
    }

    /** As many lines as may have to be written: each injection, each rest from a new cartridge, each exact one. */
    private static int injections(DoorView door) {
        int listed = door.rows().stream()
                .mapToInt(row -> row.extra().size()
                        + row.cells().stream()
                                .flatMap(Optional::stream)
                                .mapToInt(cell -> cell.amounts().size())
                                .sum())
                .sum();
        return listed + door.exact().size();
    }
}

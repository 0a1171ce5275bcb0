package cyclepacket.page;

import cyclepacket.plan.Plan;
import java.util.stream.IntStream;

/** How many empty rows fill two pages of the log, by paper and text size, with room for a banner. */
final class LogViews {
    private LogViews() {}

    static LogView of(Plan plan) {
        int rows = switch (plan.textSize()) {
            case STANDARD -> plan.paper() == Plan.Paper.LETTER ? 44 : 48;
            case LARGE -> plan.paper() == Plan.Paper.LETTER ? 25 : 28;
        };
        return new LogView(
                IntStream.rangeClosed(1, rows).mapToObj(Integer::toString).toList());
    }
}

package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * In which order everything of a day is done, and in which spot each injection goes.
 *
 * @param belly true when something goes under the skin
 * @param muscle true when something goes into a muscle
 * @param order everything that a day can hold, in the order in which it is done
 * @param exact what is done once, at a minute of its own
 * @param columns the door names of what is injected
 * @param rows one day with an injection each, from today on
 * @param inDays true when the list of days names the spots and the pen's page draws them, so that no page of its own is
 *     needed
 */
public record SitesView(
        boolean belly,
        boolean muscle,
        List<Step> order,
        List<ExactStep> exact,
        List<String> columns,
        List<Row> rows,
        boolean inDays) {
    public SitesView {
        order = List.copyOf(order);
        exact = List.copyOf(exact);
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** One thing to do and its time. */
    public record Step(String time, String doorName) {}

    /** One thing to do once, on its day and at its minute. */
    public record ExactStep(DayName day, String time, String doorName) {}

    /**
     * One day.
     *
     * @param cells the spots of each column, in order; empty where nothing is injected
     */
    public record Row(DayName day, List<Optional<Spots>> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** The spots of one medicine on one day. */
    public record Spots(List<Spot> each) {
        public Spots {
            each = List.copyOf(each);
        }
    }

    /** One spot: its number on the map and its side, {@code left} or {@code right}. */
    public record Spot(String number, String side) {}
}

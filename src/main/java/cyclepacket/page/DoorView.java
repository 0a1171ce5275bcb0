package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * The page for the refrigerator door.
 *
 * @param time the daily time that all rows share
 * @param columns one for each medicine that is given in the evening
 * @param rows one evening each, from today on
 * @param callBy the time after which a patient without a call calls us; empty when no row waits for a call
 * @param notFinished the evening after the last row, when the course is not known to end there
 * @param exact injections at an exact minute that were called
 */
public record DoorView(
        Optional<String> time,
        List<Column> columns,
        List<Row> rows,
        Optional<String> callBy,
        Optional<DayName> notFinished,
        List<Exact> exact) {
    public DoorView {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        exact = List.copyOf(exact);
    }

    /** One medicine by its door name; {@code window} is true when a pen's number is read. */
    public record Column(String doorName, boolean window) {}

    /**
     * One evening.
     *
     * @param cells one for each column, empty where nothing is given
     * @param injections how many needles this evening
     * @param injectionsIfEnds how many when the cartridge ends
     */
    public record Row(
            DayName day,
            boolean waits,
            List<Optional<Cell>> cells,
            Optional<Change> change,
            String injections,
            String injectionsIfEnds) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** Injections of one medicine on one evening: one box and one tick for each. */
    public record Cell(List<BoxedAmount> amounts, Optional<String> time) {
        public Cell {
            amounts = List.copyOf(amounts);
        }
    }

    /**
     * A new-cartridge evening.
     *
     * @param sure true when every possible cartridge ends that evening
     * @param box the number of the box to have ready; empty when there is none at home
     */
    public record Change(boolean sure, Optional<String> box) {}

    /** One injection at an exact minute. */
    public record Exact(DayName day, String doorName, BoxedAmount amount, String time, List<String> alsoTimes) {
        public Exact {
            alsoTimes = List.copyOf(alsoTimes);
        }
    }
}

package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * The page for the refrigerator door.
 *
 * @param time the daily time that most rows share
 * @param aroundTheDay true when not everything is given in the evening
 * @param columns one for each medicine that is given day by day
 * @param penName the door name of the pen whose number is read, for the head of that column
 * @param window what the pen's number shows: {@code owed} or {@code left}; {@code none} without a pen
 * @param rows one evening each, from today on
 * @param callBy the time after which a patient without a call calls us; empty when no row waits for a call
 * @param notFinished the evening after the last row, when the course is not known to end there
 * @param goesOn the last day listed, where something is only stopped when the patient is told to
 * @param exact injections at an exact minute that were called
 */
public record DoorView(
        Optional<String> time,
        boolean aroundTheDay,
        List<Column> columns,
        Optional<String> penName,
        String window,
        List<Row> rows,
        Optional<String> callBy,
        Optional<DayName> notFinished,
        Optional<DayName> goesOn,
        List<Exact> exact) {
    public DoorView {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        exact = List.copyOf(exact);
    }

    /**
     * One medicine by its door name; {@code window} is {@code owed}, {@code left} or, without a pen, {@code none};
     * {@code time} is the one that all its cells share, where the page has no time for all, and {@code times} its parts, one
     * for each box.
     */
    public record Column(String doorName, String window, Optional<String> time, List<String> times) {
        public Column {
            times = List.copyOf(times);
        }
    }

    /**
     * One evening.
     *
     * @param waits true when a call decides this evening
     * @param cells one for each column, empty where nothing is given
     * @param readings one for each injection after which a number is read
     * @param injections how many needles this evening
     * @param injectionsIfEnds how many when the cartridge ends
     * @param extra one tick for each injection that may be added
     */
    public record Row(
            DayName day,
            boolean waits,
            List<Optional<Cell>> cells,
            List<String> readings,
            List<ChangeView> changes,
            String injections,
            String injectionsIfEnds,
            List<String> extra) {
        public Row {
            cells = List.copyOf(cells);
            readings = List.copyOf(readings);
            changes = List.copyOf(changes);
            extra = List.copyOf(extra);
        }
    }

    /**
     * Injections of one medicine on one evening: one box and one tick for each.
     *
     * @param time when it is not the shared one
     * @param times one for each box, when they differ
     * @param marks what each is drawn to, or how many pieces it is; empty on an evening that waits for a call
     * @param toWrite what the patient writes beside such an amount: {@code vials} and the mark, or the {@code mark}
     */
    public record Cell(
            List<BoxedAmount> amounts,
            Optional<String> time,
            List<String> times,
            List<String> marks,
            Optional<String> toWrite) {
        public Cell {
            amounts = List.copyOf(amounts);
            times = List.copyOf(times);
            marks = List.copyOf(marks);
        }
    }

    /**
     * One injection at an exact minute.
     *
     * @param notes a sentence on the night it lies in
     * @param without the door names of what is not given on that day
     * @param last true when nothing more is planned after it
     * @param be when to be at the clinic after it, told without saying what for
     */
    public record Exact(
            DayName day,
            String doorName,
            BoxedAmount amount,
            String time,
            List<String> notes,
            List<String> without,
            boolean last,
            Optional<Appointment> be) {
        public Exact {
            notes = List.copyOf(notes);
            without = List.copyOf(without);
        }
    }

    /** A day and the time at which it starts. */
    public record Appointment(DayName day, String time) {}
}

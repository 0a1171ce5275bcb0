package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * The list of days: one row an evening, past evenings too.
 *
 * @param time the time that the evenings share
 * @param notFinished the evening after the last row, when no trigger was called
 */
public record DaysView(
        Optional<String> time, List<Row> rows, Optional<DayName> notFinished, Optional<String> callBy) {
    public DaysView {
        rows = List.copyOf(rows);
    }

    /**
     * One day.
     *
     * @param state {@code done}, {@code missed}, {@code part}, {@code unknown}, {@code planned} or {@code wait}
     * @param visits what happens at the clinic that day, with its time
     */
    public record Row(
            DayName day,
            String state,
            List<Dose> doses,
            List<Visit> visits,
            Optional<DoorView.Change> change) {
        public Row {
            doses = List.copyOf(doses);
            visits = List.copyOf(visits);
        }
    }

    /** One medicine of that day; {@code time} is there when it differs from the shared one. */
    public record Dose(String medicine, List<BoxedAmount> amounts, Optional<String> time) {
        public Dose {
            amounts = List.copyOf(amounts);
        }
    }

    /** A visit to the clinic. */
    public record Visit(String time, String what) {}
}

package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * The list of days: one row a day, past days too.
 *
 * @param time the time that the evenings share; empty where not everything is given in the evening
 * @param times the times of each medicine, where not everything is given in the evening
 * @param notFinished the evening after the last row, when no trigger was called
 * @param callBy the time after which a patient without a call calls us; empty when no row waits for a call
 * @param clocks one sentence for each change of the patient's clocks in the course
 */
public record DaysView(
        Optional<String> time,
        List<TimeLine> times,
        List<Row> rows,
        Optional<DayName> notFinished,
        Optional<String> callBy,
        List<String> clocks) {
    public DaysView {
        times = List.copyOf(times);
        clocks = List.copyOf(clocks);
        rows = List.copyOf(rows);
    }

    /** One medicine and its times of day. */
    public record TimeLine(String medicine, String times) {}

    /**
     * One day.
     *
     * @param state that of all its doses; empty when they differ or there are none
     * @param visits what happens at the clinic that day, with its time
     * @param retrieval the time at which the eggs are collected that day, once the trigger was called
     */
    public record Row(
            DayName day,
            Optional<String> state,
            List<Dose> doses,
            List<Visit> visits,
            Optional<String> retrieval,
            List<ChangeView> changes) {
        public Row {
            doses = List.copyOf(doses);
            visits = List.copyOf(visits);
            changes = List.copyOf(changes);
        }
    }

    /**
     * One medicine of that day.
     *
     * @param state {@code done}, {@code missed}, {@code part}, {@code more}, {@code unknown}, {@code planned},
     *     {@code held} or {@code wait}
     * @param mark what it is drawn to, for what is drawn
     * @param time there when it differs from the shared one
     * @param spot the number of the spot it goes into, where no other page says so
     */
    public record Dose(
            String medicine,
            List<BoxedAmount> amounts,
            Optional<String> time,
            String state,
            Optional<String> mark,
            Optional<String> spot) {
        public Dose {
            amounts = List.copyOf(amounts);
        }
    }

    /** A visit to the clinic. */
    public record Visit(String time, String what) {}
}

package cyclepacket.plan;

import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Refusal;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A day-by-day template: which medicine from which anchor to which.
 *
 * @param anchors what each anchor means, in the words of the file
 * @param triggerBefore how long T lies before each anchor it is computed from, elapsed; normally R alone
 */
public record Protocol(
        String id,
        String title,
        Map<Anchor, String> anchors,
        Map<Anchor, Duration> triggerBefore,
        StimulationDays stimulationDays,
        List<Row> rows,
        List<Visit> visits) {
    public Protocol {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(title, "title");
        anchors = InFileOrder.copyOf(anchors);
        triggerBefore = InFileOrder.copyOf(triggerBefore);
        Objects.requireNonNull(stimulationDays, "stimulationDays");
        rows = List.copyOf(rows);
        visits = List.copyOf(visits);
    }

    /** How many evenings stimulation takes: 1 to 60, in rising order. */
    public record StimulationDays(int least, int usual, int most) {
        public StimulationDays {
            if (least < 1 || least > usual || usual > most || most > 60) {
                throw new Refusal(
                        "least, usual and most days rise and lie between 1 and 60",
                        "write for example {least: 8, usual: 10, most: 13}");
            }
        }
    }

    /**
     * One medicine over a stretch of days.
     *
     * @param firstDay the first day that has a dose
     * @param lastDay the last day that has a dose; equal to {@code firstDay} for a single one
     * @param time the name of a time in the plan's {@code times}; {@code exact} means the instant of T
     * @param amount the fixed amount a day; empty when the plan's dose lines give it
     */
    public record Row(String medicine, DayMark firstDay, DayMark lastDay, String time, Optional<Dose> amount) {
        /** The time name of a row that happens at the anchor's own instant. */
        public static final String EXACT = "exact";

        public Row {
            Objects.requireNonNull(medicine, "medicine");
            Objects.requireNonNull(firstDay, "firstDay");
            Objects.requireNonNull(lastDay, "lastDay");
            Objects.requireNonNull(time, "time");
            Objects.requireNonNull(amount, "amount");
        }

        public boolean isExact() {
            return time.equals(EXACT);
        }
    }

    /** A visit to the clinic, in the clinic's time. */
    public record Visit(DayMark on, LocalTime at, String what) {
        public Visit {
            Objects.requireNonNull(on, "on");
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(what, "what");
        }
    }
}

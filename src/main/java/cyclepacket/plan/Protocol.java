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
 * @param stimulationDays how long stimulation takes; empty for a protocol without T
 * @param anchoring how the anchors come to their days
 * @param aim what the course is for, which decides some words
 */
public record Protocol(
        String id,
        String title,
        Map<Anchor, String> anchors,
        Map<Anchor, Duration> triggerBefore,
        Optional<StimulationDays> stimulationDays,
        List<Row> rows,
        List<Visit> visits,
        Anchoring anchoring,
        Aim aim) {
    /** A protocol that starts with S1 and all of whose days are written. */
    public Protocol(
            String id,
            String title,
            Map<Anchor, String> anchors,
            Map<Anchor, Duration> triggerBefore,
            StimulationDays stimulationDays,
            List<Row> rows,
            List<Visit> visits) {
        this(
                id,
                title,
                anchors,
                triggerBefore,
                Optional.of(stimulationDays),
                rows,
                visits,
                Anchoring.fromS1(),
                Aim.TRANSFER);
    }

    public Protocol {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(title, "title");
        anchors = InFileOrder.copyOf(anchors);
        triggerBefore = InFileOrder.copyOf(triggerBefore);
        Objects.requireNonNull(stimulationDays, "stimulationDays");
        rows = List.copyOf(rows);
        visits = List.copyOf(visits);
        Objects.requireNonNull(anchoring, "anchoring");
        Objects.requireNonNull(aim, "aim");
    }

    /** What a course is for. */
    public enum Aim {
        /** A pregnancy, sooner or later. */
        TRANSFER,
        INSEMINATION,
        /** Eggs are kept; no page speaks of a pregnancy. */
        FREEZING
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
     * @param pattern when within these days it is given
     * @param amount the fixed amount at each of its times; empty when the plan's dose lines give it
     */
    public record Row(String medicine, DayMark firstDay, DayMark lastDay, Pattern pattern, Optional<Dose> amount) {
        /** The time name of a row that happens at the anchor's own instant. */
        public static final String EXACT = "exact";

        /** A row that is given once a day at one named time. */
        public Row(String medicine, DayMark firstDay, DayMark lastDay, String time, Optional<Dose> amount) {
            this(medicine, firstDay, lastDay, Pattern.at(time), amount);
        }

        public Row {
            Objects.requireNonNull(medicine, "medicine");
            Objects.requireNonNull(firstDay, "firstDay");
            Objects.requireNonNull(lastDay, "lastDay");
            Objects.requireNonNull(pattern, "pattern");
            Objects.requireNonNull(amount, "amount");
        }

        /** At its anchor's own instant. */
        public boolean isExact() {
            return pattern.isExact();
        }

        /** A part of the trigger: at the instant of T, or some hours after it. */
        public boolean isTrigger() {
            return isExact() && pattern.everyHours().isEmpty() && firstDay.equals(new DayMark.FromAnchor(Anchor.T, 0));
        }
    }

    /**
     * A visit to the clinic, in the clinic's time.
     *
     * @param at the clock time; empty when the visit is counted in hours from its anchor's instant
     * @param hoursAfter elapsed hours after that instant
     */
    public record Visit(DayMark on, Optional<LocalTime> at, Optional<Duration> hoursAfter, String what) {
        public Visit {
            Objects.requireNonNull(on, "on");
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(hoursAfter, "hoursAfter");
            Objects.requireNonNull(what, "what");
            if (at.isPresent() == hoursAfter.isPresent()) {
                throw new Refusal("a visit has a clock time or hours after an anchor", "keep at, or hours-after");
            }
        }

        /** A visit at a clock time. */
        public Visit(DayMark on, LocalTime at, String what) {
            this(on, Optional.of(at), Optional.empty(), what);
        }
    }
}

package cyclepacket.ledger;

import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One dial setting or one syringe, in the order in which medicine leaves the containers.
 *
 * @param number which setting of its evening, from 1
 * @param dialled the number that is set
 * @param before everything drawn before it, medicine that was lost since the last setting included
 * @param after everything drawn up to and with it
 * @param given what reached the patient; empty when it is still to come or nobody knows
 * @param recordLine which line of the record says what happened, from 0; empty when it is still to come
 * @param provesNoEnd whether the record proves that no container stopped in it
 * @param stops the containers that stopped in it, in order
 * @param unknown how much of {@code after - before} may never have been drawn
 */
public record Draw(
        LocalDate date,
        int number,
        Dose dialled,
        Dose before,
        Dose after,
        Optional<Dose> given,
        Optional<Integer> recordLine,
        boolean provesNoEnd,
        List<Stop> stops,
        Dose unknown) {
    public Draw {
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(dialled, "dialled");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        Objects.requireNonNull(given, "given");
        Objects.requireNonNull(recordLine, "recordLine");
        stops = List.copyOf(stops);
        Objects.requireNonNull(unknown, "unknown");
    }

    /**
     * One container that stopped.
     *
     * @param window the number that was read
     * @param total everything drawn when it stopped, if the number is right
     * @param isConfirmed whether the number was read back
     * @param isPutAway whether it was thrown away with its rest, for a reason that somebody gave
     */
    public record Stop(Dose window, Dose total, boolean isConfirmed, boolean isPutAway) {
        public Stop {
            Objects.requireNonNull(window, "window");
            Objects.requireNonNull(total, "total");
        }

        /** A container that ran dry. */
        public Stop(Dose window, Dose total, boolean isConfirmed) {
            this(window, total, isConfirmed, false);
        }
    }

    public boolean isRecorded() {
        return recordLine.isPresent();
    }

    /** The same setting as if the record said that nothing stopped in it. */
    Draw provingNoEnd() {
        return new Draw(date, number, dialled, before, after, given, recordLine, true, List.of(), unknown);
    }

    /** The same setting as if the record said that one container stopped at this total and the rest was given. */
    Draw stoppingAt(Stop stop) {
        return new Draw(date, number, dialled, before, after, given, recordLine, false, List.of(stop), unknown);
    }
}

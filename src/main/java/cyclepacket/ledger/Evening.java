package cyclepacket.ledger;

import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One evening of one medicine.
 *
 * @param day the trade's name of the day, for example {@code S4}; empty for an evening outside the course
 * @param at when it is due, in the patient's zone; empty for an evening outside the course
 * @param ordered the ordered dose; zero for an evening outside the course
 * @param given all that reached the patient, on an evening that has a record; what nobody knows is not counted
 * @param settings the numbers to dial one after the other, or that were dialled
 */
public record Evening(
        LocalDate date,
        String day,
        Optional<ZonedDateTime> at,
        Dose ordered,
        State state,
        Optional<Dose> given,
        List<Dose> settings) {
    public Evening {
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(ordered, "ordered");
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(given, "given");
        settings = List.copyOf(settings);
    }

    /** What is known of an evening. */
    public enum State {
        PLANNED,
        /** A later call decides it. */
        PROVISIONAL,
        /** The whole ordered dose was given. */
        GIVEN,
        MISSED,
        /** Something else than the ordered dose was given, or nobody knows. */
        PARTIAL
    }

    /** Whether an order holds the medicine back: no injection. */
    public boolean isHeld() {
        return ordered.isZero() && !day.isEmpty() && isToCome();
    }

    public boolean isToCome() {
        return state == State.PLANNED || state == State.PROVISIONAL;
    }
}

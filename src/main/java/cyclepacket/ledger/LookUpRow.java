package cyclepacket.ledger;

import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * One line of the look-up: if the coming end falls on this evening and the window shows this number, then the end after
 * it.
 *
 * @param setting which setting of that evening, from 1
 * @param window the number in the window
 * @param fromNext what the new container gives in this setting
 * @param next the end after it; empty when it cannot come in the course, or when no container is left to end
 * @param hasNextContainer whether another container is at home
 */
public record LookUpRow(
        LocalDate date, int setting, Dose window, Dose fromNext, Optional<NextEnd> next, boolean hasNextContainer) {
    public LookUpRow {
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(window, "window");
        Objects.requireNonNull(fromNext, "fromNext");
        Objects.requireNonNull(next, "next");
    }

    /** The evenings on which the next container can end; {@code latest} is empty when it may outlast the course. */
    public record NextEnd(int leaving, LocalDate earliest, Optional<LocalDate> latest) {
        public NextEnd {
            Objects.requireNonNull(earliest, "earliest");
            Objects.requireNonNull(latest, "latest");
        }
    }
}

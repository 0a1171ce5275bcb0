package cyclepacket.ledger;

import java.util.Objects;
import java.util.Optional;

/**
 * A container that may end on one evening.
 *
 * @param leaving the container that ends, from 1
 * @param setting on which setting of the evening, from 1
 * @param draw that setting's place among all settings, from 0
 * @param isCertain whether every content it can have ends it on this evening
 * @param owed what the next container must still give; empty when the next container gives the whole dose
 * @param isRead whether the record says so
 */
public record DayChange(
        int leaving, int setting, int draw, boolean isCertain, Cause cause, Optional<Owed> owed, boolean isRead) {
    public DayChange {
        Objects.requireNonNull(cause, "cause");
        Objects.requireNonNull(owed, "owed");
    }

    /** Why a container ends. */
    public enum Cause {
        EMPTY,
        IN_USE_LIMIT,
        /** A vial holds less than the whole next dose; its rest is not drawn. */
        TOO_LITTLE_LEFT
    }
}

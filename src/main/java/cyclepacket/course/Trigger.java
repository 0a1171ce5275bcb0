package cyclepacket.course;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.Objects;

/**
 * The trigger injection's instant.
 *
 * @param at in the patient's zone
 * @param isCalled whether it was told to the patient and read back; before that it is a plan and is not printed
 */
public record Trigger(ZonedDateTime at, boolean isCalled) {
    /** A trigger before this hour belongs to the evening before; common practice, no published source. */
    public static final LocalTime NIGHT_ENDS = LocalTime.of(6, 0);

    public Trigger {
        Objects.requireNonNull(at, "at");
    }

    /** A later part of the same trigger, counted in elapsed hours. */
    public Trigger after(Duration hours) {
        return new Trigger(at.plus(hours), isCalled);
    }

    /** The evening that T-1 counts from: the day before for a time from 00:00 to 05:59. */
    public LocalDate evening() {
        return isAfterMidnight() ? at.toLocalDate().minusDays(1) : at.toLocalDate();
    }

    public boolean isAfterMidnight() {
        return at.toLocalTime().isBefore(NIGHT_ENDS);
    }
}

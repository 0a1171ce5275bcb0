package cyclepacket.course;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Objects;

/**
 * An evening on which an order holds a medicine back: there is no injection of it.
 *
 * @param day the trade's name of the day
 * @param at when it would have been due, in the patient's zone
 * @param isProvisional whether a later call decides the evening
 */
public record HeldDose(LocalDate date, String day, String medicine, ZonedDateTime at, boolean isProvisional) {
    public HeldDose {
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(medicine, "medicine");
        Objects.requireNonNull(at, "at");
    }
}

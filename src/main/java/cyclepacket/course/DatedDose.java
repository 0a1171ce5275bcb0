package cyclepacket.course;

import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Objects;
import java.util.Optional;

/**
 * One ordered dose on its evening.
 *
 * @param date the evening it belongs to; for a trigger after midnight the day before
 * @param day the trade's name of the day, for example {@code S4} or {@code T}
 * @param at when it is due, in the patient's zone
 * @param isExact whether the minute matters
 * @param isProvisional whether a later call decides it
 * @param row which row of the protocol, from 0
 * @param doseLine which dose line of the plan gives the amount, from 0; empty when the row itself does
 */
public record DatedDose(
        LocalDate date,
        String day,
        String medicine,
        Dose amount,
        ZonedDateTime at,
        boolean isExact,
        boolean isProvisional,
        int row,
        Optional<Integer> doseLine) {
    public DatedDose {
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(medicine, "medicine");
        Objects.requireNonNull(amount, "amount");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(doseLine, "doseLine");
    }
}

package cyclepacket.course;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Objects;

/** A visit on its day, in the clinic's zone. */
public record DatedVisit(LocalDate date, String day, ZonedDateTime at, String what) {
    public DatedVisit {
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(what, "what");
    }
}

package cyclepacket.intake;

import cyclepacket.plan.Plan.Moment;
import cyclepacket.quantity.Refusal;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates, clock times, zones and hours as the files write them. */
final class Calendar {
    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final Pattern TIME = Pattern.compile("\\d{2}:\\d{2}");
    private static final Pattern MOMENT = Pattern.compile("([^T]+)(?:T(.{5})(Z|[+-]\\d{2}:\\d{2})?)?");
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;

    private Calendar() {}

    static Part<LocalDate> date(Field field) {
        return field.parsed("DATE-INVALID", Calendar::date);
    }

    static Part<LocalTime> time(Field field) {
        return field.parsed("TIME-INVALID", Calendar::time);
    }

    static Part<ZoneId> zone(Field field) {
        return field.parsed("ZONE-UNKNOWN", Calendar::zone);
    }

    static Part<Moment> moment(Field field) {
        boolean isDateRight =
                field.text().value().filter(Calendar::startsWithDate).isPresent();
        return field.parsed(isDateRight ? "TIME-INVALID" : "DATE-INVALID", Calendar::moment);
    }

    /** Hours with at most the decimals that make whole minutes, for example 34.5. */
    static Part<Duration> hours(Field field) {
        return field.attempt("VALUE-RANGE", field.number(), Calendar::hours);
    }

    static LocalDate date(String text) {
        if (!DATE.matcher(text).matches()) {
            throw new Refusal(
                    Characters.quoted(text) + " is not a date", "write year-month-day, for example 2027-03-09");
        }
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR) {
                return date;
            }
        } catch (DateTimeException noSuchDay) {
            throw new Refusal("the date " + text + " does not exist", "check the day and the month");
        }
        throw new Refusal("the year of " + text + " cannot be right", "write a year from 1900 to 2199");
    }

    static LocalTime time(String text) {
        try {
            if (TIME.matcher(text).matches()) {
                return LocalTime.parse(text);
            }
        } catch (DateTimeException noSuchTime) {
            throw new Refusal("the clock time " + text + " does not exist", "write 00:00 to 23:59");
        }
        throw new Refusal(
                Characters.quoted(text) + " is not a clock time",
                "write four digits of a 24-hour clock, as in \"09:05\"");
    }

    static Moment moment(String text) {
        Matcher parts = MOMENT.matcher(text);
        if (!parts.matches() || !DATE.matcher(parts.group(1)).matches()) {
            throw new Refusal(
                    Characters.quoted(text) + " is not a day, or a day and time",
                    "write for example 2027-03-15, or \"2027-03-15T08:30\"");
        }
        Optional<LocalTime> time = Optional.ofNullable(parts.group(2)).map(Calendar::time);
        return new Moment(
                date(parts.group(1)), time, Optional.ofNullable(parts.group(3)).map(Calendar::offset));
    }

    private static boolean startsWithDate(String text) {
        try {
            return text.indexOf('T') > 0 && date(text.substring(0, text.indexOf('T'))) != null;
        } catch (Refusal notADate) {
            return false;
        }
    }

    private static ZoneOffset offset(String text) {
        try {
            return ZoneOffset.of(text);
        } catch (DateTimeException noSuchOffset) {
            throw new Refusal("the offset " + text + " does not exist", "write for example -05:00, or leave it out");
        }
    }

    /** Only names of places: a fixed offset would miss the days on which clocks change. */
    static ZoneId zone(String text) {
        boolean isPlace = text.contains("/") && !text.startsWith("Etc/") && !text.startsWith("SystemV/");
        if (isPlace && ZoneId.getAvailableZoneIds().contains(text)) {
            return ZoneId.of(text);
        }
        TreeSet<String> places = new TreeSet<>(ZoneId.getAvailableZoneIds());
        places.removeIf(name -> !name.contains("/") || name.startsWith("Etc/") || name.startsWith("SystemV/"));
        throw new Refusal(
                Characters.quoted(text) + " is not a time zone by region and city",
                NearestName.of(text, places)
                        .map(near -> "did you mean " + near + "?")
                        .orElse("write region and city, for example America/New_York"));
    }

    static Duration hours(BigDecimal hours) {
        BigDecimal minutes = hours.multiply(BigDecimal.valueOf(60)).stripTrailingZeros();
        if (minutes.scale() > 0) {
            throw new Refusal(hours.toPlainString() + " hours are not whole minutes", "write for example 36 or 34.5");
        }
        return Duration.ofMinutes(minutes.longValueExact());
    }
}

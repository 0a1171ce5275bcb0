package cyclepacket.safety;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How findings name days, hours and spans; findings are for staff and always in English. */
final class Phrases {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private Phrases() {}

    /** For example {@code Saturday 13 March 2027}. */
    static String day(LocalDate day) {
        return DAY.format(day);
    }

    /** For example {@code Saturday 13 March 2027, 19:30 in America/New_York}. */
    static String at(ZonedDateTime at) {
        return DAY.format(at) + ", " + HOUR.format(at) + " in " + at.getZone().getId();
    }

    /** For example {@code 20:30}, in the zone of {@code at}. */
    static String hour(ZonedDateTime at) {
        return HOUR.format(at);
    }

    /** Elapsed minutes in hours, for example {@code 32 h 30 min}. */
    static String hours(long minutes) {
        long size = Math.abs(minutes);
        String sign = minutes < 0 ? "minus " : "";
        return sign + size / 60 + " h" + (size % 60 == 0 ? "" : " " + size % 60 + " min");
    }

    /** A count with its noun, for example {@code 1 day} or {@code 3 days}. */
    static String count(long number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    /** The same words however they were typed: no outer blanks, one blank inside, lower case. */
    static String plain(String text) {
        return text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}

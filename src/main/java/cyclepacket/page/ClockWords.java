package cyclepacket.page;

import static cyclepacket.page.AmountWords.NO_BREAK;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days and times as a patient reads them, each kept on one line; the words come from the language, not the machine. */
final class ClockWords {
    private static final String HOUR = "([01]\\d|2[0-3]):([0-5]\\d)";
    private static final Pattern SPAN = Pattern.compile("(?<![\\d:])" + HOUR + "\\s*-\\s*" + HOUR + "(?![\\d:])");

    private final Wording wording;

    ClockWords(Wording wording) {
        this.wording = wording;
    }

    DayName day(LocalDate date) {
        Tongue tongue = wording.tongue();
        return new DayName(
                tongue.weekday(date),
                date(date),
                joined(tongue.day(date)),
                tongue.shortWeekday(date),
                Integer.toString(date.getDayOfMonth()));
    }

    /** For example {@code 12 March}. */
    String date(LocalDate date) {
        return joined(wording.tongue().date(date));
    }

    /** For example {@code 12 March 2027}. */
    String dateAndYear(LocalDate date) {
        return joined(wording.tongue().dateAndYear(date));
    }

    /** Both clocks, for example {@code 8:30 p.m. (20:30)}; midnight and noon by their names. */
    String time(LocalTime time) {
        return joined(twelve(time))
                + NO_BREAK
                + String.format(Locale.ROOT, "(%02d:%02d)", time.getHour(), time.getMinute());
    }

    /**
     * Opening hours with each span on both clocks, for example {@code weekdays 8:00 a.m. to 4:30 p.m. (08:00 to 16:30)};
     * any other words stay as the clinic wrote them.
     */
    String hours(String line) {
        return SPAN.matcher(line).replaceAll(span -> {
            LocalTime first = LocalTime.of(Integer.parseInt(span.group(1)), Integer.parseInt(span.group(2)));
            LocalTime last = LocalTime.of(Integer.parseInt(span.group(3)), Integer.parseInt(span.group(4)));
            return Matcher.quoteReplacement(range(twelve(first), twelve(last)) + " ("
                    + range(span.group(1) + ":" + span.group(2), span.group(3) + ":" + span.group(4)) + ")");
        });
    }

    private String range(String first, String last) {
        return wording.text("range")
                .replace("{least}", first)
                .replace("{most}", last)
                .replace(' ', NO_BREAK);
    }

    private String twelve(LocalTime time) {
        if (time.equals(LocalTime.MIDNIGHT)) {
            return wording.text("time.midnight");
        }
        if (time.equals(LocalTime.NOON)) {
            return wording.text("time.noon");
        }
        return wording.tongue().twelve(time);
    }

    /** On one line, whatever space the language's data put between. */
    private static String joined(String words) {
        return words.replace(' ', NO_BREAK).replace('\u202f', NO_BREAK);
    }

    /** The language's name of a zone, or the name of its city. */
    String zone(ZoneId zone) {
        return wording.find("zone." + zone.getId()).orElseGet(() -> {
            String city =
                    zone.getId().substring(zone.getId().lastIndexOf('/') + 1).replace('_', NO_BREAK);
            return wording.text("zone").replace("{city}", city);
        });
    }
}

package cyclepacket.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;

/** How one language writes numbers, days and lists, and which form of a word a number takes. */
interface Tongue {
    /** For example {@code 1,250.5}; never a trailing zero. */
    String number(BigDecimal number);

    String weekday(LocalDate date);

    String shortWeekday(LocalDate date);

    /** Day and month, for example {@code 12 March}. */
    String date(LocalDate date);

    /** For example {@code 12 March 2027}. */
    String dateAndYear(LocalDate date);

    /** Weekday, day and month, for example {@code Friday 12 March}. */
    String day(LocalDate date);

    /** On the clock of twelve hours, for example {@code 8:30 p.m.}. */
    String twelve(LocalTime time);

    /** The plural category by the names of Unicode's plural rules: {@code one}, {@code few}, {@code other} and so on. */
    String plural(BigDecimal number);

    /** Several names, all of them. */
    String all(List<String> names);

    /** Several times of day. */
    String times(List<String> times);

    /** Several names, one of them. */
    String either(List<String> names);
}

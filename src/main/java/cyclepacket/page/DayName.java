package cyclepacket.page;

/**
 * One day as a person reads it; each text keeps its words on one line.
 *
 * @param weekday for example {@code Friday}
 * @param date for example {@code 12 March}
 * @param full for example {@code Friday 12 March}
 * @param shortWeekday for example {@code Fri}
 * @param dayOfMonth for example {@code 12}
 */
public record DayName(String weekday, String date, String full, String shortWeekday, String dayOfMonth) {}

package cyclepacket.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;

/**
 * The source language, from its own words: loading ICU's data would double a cold start. A test holds every form of it
 * to ICU's data.
 */
final class SourceTongue implements Tongue {
    private final Wording wording;

    SourceTongue(Wording wording) {
        this.wording = wording;
    }

    @Override
    public String number(BigDecimal number) {
        String plain = number.toPlainString();
        int point = plain.indexOf('.');
        StringBuilder grouped = new StringBuilder(point < 0 ? plain : plain.substring(0, point));
        for (int place = grouped.length() - 3; place > 0; place -= 3) {
            grouped.insert(place, ',');
        }
        return grouped + (point < 0 ? "" : plain.substring(point));
    }

    @Override
    public String weekday(LocalDate date) {
        return wording.text("weekday." + date.getDayOfWeek().getValue());
    }

    @Override
    public String shortWeekday(LocalDate date) {
        return wording.text("weekday.short." + date.getDayOfWeek().getValue());
    }

    @Override
    public String date(LocalDate date) {
        return date.getDayOfMonth() + " " + wording.text("month." + date.getMonthValue());
    }

    @Override
    public String dateAndYear(LocalDate date) {
        return date(date) + " " + date.getYear();
    }

    @Override
    public String day(LocalDate date) {
        return weekday(date) + " " + date(date);
    }

    @Override
    public String twelve(LocalTime time) {
        int hour = time.getHour() % 12 == 0 ? 12 : time.getHour() % 12;
        String half = wording.text(time.getHour() < 12 ? "time.before-noon" : "time.after-noon");
        return String.format(Locale.ROOT, "%d:%02d %s", hour, time.getMinute(), half);
    }

    @Override
    public String plural(BigDecimal number) {
        return number.compareTo(BigDecimal.ONE) == 0 ? "one" : "other";
    }

    @Override
    public String all(List<String> names) {
        return String.join(wording.text("and"), names);
    }

    @Override
    public String times(List<String> times) {
        return String.join(wording.text("and.time"), times);
    }

    @Override
    public String either(List<String> names) {
        return String.join(" " + wording.text("or") + " ", names);
    }
}

package cyclepacket.plan;

import cyclepacket.quantity.Refusal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A day as a file names it: a date, or so many days from an anchor. */
public sealed interface DayMark {

    /** The anchor it hangs on; empty for a date. */
    Optional<Anchor> anchor();

    /** A calendar date. */
    record Dated(LocalDate date) implements DayMark {
        public Dated {
            Objects.requireNonNull(date, "date");
        }

        @Override
        public Optional<Anchor> anchor() {
            return Optional.empty();
        }

        @Override
        public String toString() {
            return date.toString();
        }
    }

    /**
     * A day counted from an anchor.
     *
     * @param daysAfter whole days, negative before the anchor, -400 to 400
     */
    record FromAnchor(Anchor from, int daysAfter) implements DayMark {
        /** Common practice, no published source: no course goes on for more than about a year. */
        public static final int MOST_DAYS = 400;

        public FromAnchor {
            Objects.requireNonNull(from, "from");
            if (Math.abs(daysAfter) > MOST_DAYS) {
                throw new Refusal(
                        "a day more than " + MOST_DAYS + " days from its anchor",
                        "write a day within a year of " + from);
            }
        }

        @Override
        public Optional<Anchor> anchor() {
            return Optional.of(from);
        }

        @Override
        public String toString() {
            if (from.isCounted() && daysAfter >= 0) {
                String letters = from.code().substring(0, from.code().length() - 1);
                return letters + (daysAfter + 1);
            }
            return daysAfter == 0 ? from.code() : from.code() + (daysAfter < 0 ? "" : "+") + daysAfter;
        }
    }

    Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    Pattern OFFSET = Pattern.compile("([A-Z]{1,3}1?)([+-]\\d{1,3})");
    Pattern COUNTED = Pattern.compile("([A-Z]{1,3})(\\d{1,3})");

    /**
     * Reads {@code 2027-03-09}, {@code T}, {@code T-1}, {@code S1+2} or {@code S6} (the sixth day counted from S1).
     *
     * @throws Refusal if it is none of these
     */
    static DayMark parse(String text) {
        if (DATE.matcher(text).matches()) {
            return new Dated(date(text));
        }
        Matcher offset = OFFSET.matcher(text);
        if (offset.matches()) {
            return new FromAnchor(new Anchor(offset.group(1)), Integer.parseInt(offset.group(2)));
        }
        Matcher counted = COUNTED.matcher(text);
        if (counted.matches() && Integer.parseInt(counted.group(2)) > 0) {
            return new FromAnchor(new Anchor(counted.group(1) + "1"), Integer.parseInt(counted.group(2)) - 1);
        }
        if (text.matches("[A-Z]{1,3}")) {
            return new FromAnchor(new Anchor(text), 0);
        }
        throw new Refusal(
                "\"" + text + "\" is not a day",
                "write a date such as 2027-03-09, or an anchor with an offset such as S6 or T-1");
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException noSuchDay) {
            throw new Refusal("the date " + text + " does not exist", "check the day and the month");
        }
    }
}

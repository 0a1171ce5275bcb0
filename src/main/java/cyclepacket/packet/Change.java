package cyclepacket.packet;

import cyclepacket.plan.Revision.What;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One change: what it is about, what holds now, and from which day.
 *
 * @param of a medicine, the name of a time, or an anchor
 * @param now the new value
 * @param from a date, or for a dose an anchor with an offset
 * @param lastDay the last evening of a hold
 */
public record Change(
        What what, Optional<String> of, Optional<String> now, Optional<String> from, Optional<String> lastDay) {
    private static final Pattern FORM =
            Pattern.compile("([A-Za-z0-9-]+)(?:=([^@=]+))?(?:@([^.@=]+)(?:\\.\\.([^.@=]+))?)?");

    public Change {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(now, "now");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(lastDay, "lastDay");
    }

    /** For example {@code fsh-pen=212.5@2027-03-09}. */
    public static Change dose(String typed) {
        return parsed(What.DOSE, typed, true, true, "fsh-pen=212.5@2027-03-09");
    }

    /** For example {@code fsh-pen@2027-03-09} or, for several evenings, {@code fsh-pen@2027-03-09..2027-03-10}. */
    public static Change hold(String typed) {
        Change hold = parsed(What.HOLD, typed, false, true, "fsh-pen@2027-03-09");
        return new Change(What.HOLD, hold.of, hold.now, hold.from, hold.lastDay.or(hold::from));
    }

    public static Change stop(String typed) {
        return parsed(What.STOP, typed, false, true, "fsh-pen@2027-03-09");
    }

    public static Change start(String typed) {
        return parsed(What.START, typed, false, true, "antagonist-syringe@2027-03-09");
    }

    /** For example {@code evening=21:00@2027-03-09}. */
    public static Change hour(String typed) {
        return parsed(What.HOUR, typed, true, true, "evening=21:00@2027-03-09");
    }

    /** For example {@code R=2027-03-15T08:30}. */
    public static Change anchor(String typed) {
        return parsed(What.ANCHOR, typed, true, false, "R=2027-03-15T08:30");
    }

    /** For example {@code T=2027-03-13T19:30}. */
    public static Change call(String typed) {
        return parsed(What.CALL, typed, true, false, "T=2027-03-13T19:30");
    }

    /** For example {@code fsh-pen=other-pen@2027-03-09}. */
    public static Change swap(String typed) {
        return parsed(What.SWAP, typed, true, true, "fsh-pen=other-pen@2027-03-09");
    }

    /** The cycle ends: nothing from this day on. */
    public static Change cancel(String day) {
        return new Change(What.CANCEL, Optional.empty(), Optional.empty(), Optional.of(day), Optional.empty());
    }

    /**
     * Past days are facts, and a day that is none would be lost.
     *
     * @throws Unclear if a change begins before the day of the call, or on no date
     */
    void requireFrom(LocalDate call) {
        for (String day : Stream.concat(from.stream(), lastDay.stream()).toList()) {
            boolean isAnchorDay = what == What.DOSE && day.matches("[A-Z]+\\d*([+-]\\d+)?");
            if (!isAnchorDay && date(day).isBefore(call)) {
                throw new Unclear(day + " is before the day of the call, " + call + ". Past days are facts: write what"
                        + " happened with ./cyclepacket record, and begin the change on " + call + " or later.");
            }
        }
    }

    private static LocalDate date(String day) {
        try {
            return LocalDate.parse(day);
        } catch (DateTimeParseException noDate) {
            throw new Unclear("\"" + day + "\" is not a date; write for example 2027-03-09.");
        }
    }

    private static Change parsed(What what, String typed, boolean hasValue, boolean hasDay, String example) {
        Matcher parts = FORM.matcher(typed.strip());
        boolean fits = parts.matches()
                && (parts.group(2) != null) == hasValue
                && (parts.group(3) != null) == hasDay
                && (parts.group(4) == null || what == What.HOLD);
        if (!fits) {
            throw new Unclear("\"" + typed + "\" is not understood; write for example " + example + ".");
        }
        return new Change(
                what,
                Optional.of(parts.group(1)),
                Optional.ofNullable(parts.group(2)),
                Optional.ofNullable(parts.group(3)),
                Optional.ofNullable(parts.group(4)));
    }
}

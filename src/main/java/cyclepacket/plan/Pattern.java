package cyclepacket.plan;

import cyclepacket.quantity.Refusal;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * When within its days a row of a protocol is given.
 *
 * @param times the names of its times of day; {@link Protocol.Row#EXACT} alone means the instant of its anchor
 * @param everyDays 1 for each day, 2 for every other day, counted from the row's first day; 1 to 60
 * @param everyHours from the anchor's instant on, elapsed; only with {@code exact}
 * @param halfFrom from this day on, half of the amount before it
 * @param hoursAfter elapsed hours after the anchor's instant; only with {@code exact}
 * @param stopRule when the patient stops, in the clinic's own words
 */
public record Pattern(
        List<String> times,
        int everyDays,
        Optional<Duration> everyHours,
        Optional<DayMark> halfFrom,
        Optional<Duration> hoursAfter,
        Optional<String> stopRule) {
    public Pattern {
        times = List.copyOf(times);
        Objects.requireNonNull(everyHours, "everyHours");
        Objects.requireNonNull(halfFrom, "halfFrom");
        Objects.requireNonNull(hoursAfter, "hoursAfter");
        Objects.requireNonNull(stopRule, "stopRule");
        if (times.isEmpty() || List.copyOf(new java.util.LinkedHashSet<>(times)).size() != times.size()) {
            throw new Refusal("a row names each of its times once", "write for example at: [morning, evening]");
        }
        if (everyDays < 1 || everyDays > 60) {
            throw new Refusal("every-days is from 1 to 60", "write 2 for every other day");
        }
        boolean isExact = times.equals(List.of(Protocol.Row.EXACT));
        if (!isExact && (times.contains(Protocol.Row.EXACT) || everyHours.isPresent() || hoursAfter.isPresent())) {
            throw new Refusal(
                    "hours are counted from an anchor's own instant",
                    "write at: exact with every-hours or hours-after");
        }
        if (everyHours.isPresent() && (hoursAfter.isPresent() || everyDays > 1)) {
            throw new Refusal("every-hours stands alone", "keep every-hours, or hours-after, or every-days");
        }
    }

    /** Once a day at one named time. */
    public static Pattern at(String time) {
        return new Pattern(List.of(time), 1, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    public boolean isExact() {
        return times.equals(List.of(Protocol.Row.EXACT));
    }
}

package cyclepacket.course;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * Clock times as people say them, made exact. Hours are elapsed, days are nominal (RFC 5545, section 3.3.6); the zone
 * rules are the IANA data that java.time carries.
 */
public final class LocalTimes {
    private LocalTimes() {}

    /** How often a clock on the wall shows a time on its day. */
    public enum Shown {
        ONCE,
        /** A clock change skips it. */
        NEVER,
        /** A clock change repeats it. */
        TWICE
    }

    /** How often {@code local} happens in {@code zone}. */
    public static Shown shown(LocalDateTime local, ZoneId zone) {
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        return switch (offsets.size()) {
            case 0 -> Shown.NEVER;
            case 1 -> Shown.ONCE;
            default -> Shown.TWICE;
        };
    }

    /**
     * The instant that is meant.
     *
     * @param offset the offset written beside the time; it decides a repeated hour and must belong to the zone then
     * @return empty if the time is skipped, is repeated without an offset, or has an offset the zone does not have then
     */
    public static Optional<ZonedDateTime> exact(LocalDateTime local, ZoneId zone, Optional<ZoneOffset> offset) {
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        if (offset.isPresent()) {
            return offset.filter(offsets::contains).map(valid -> ZonedDateTime.ofStrict(local, valid, zone));
        }
        return offsets.size() == 1 ? Optional.of(ZonedDateTime.of(local, zone)) : Optional.empty();
    }

    /** Whole minutes that pass between two instants, whatever the clocks on the wall do. */
    public static long elapsedMinutes(ZonedDateTime from, ZonedDateTime to) {
        return ChronoUnit.MINUTES.between(from.toInstant(), to.toInstant());
    }
}

package cyclepacket.plan;

import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * How the anchors of a protocol come to their days.
 *
 * @param start the anchor whose call starts the course
 * @param byPhone anchors whose day is told on the phone when it comes; rows that hang on one wait for the call
 * @param toTheMinute anchors besides T that have an hour, so that rows can be counted from their instant
 * @param atLatest for an anchor that waits: the day that it cannot be later than, as far as this protocol looks ahead
 */
public record Anchoring(Anchor start, Set<Anchor> byPhone, Set<Anchor> toTheMinute, Map<Anchor, DayMark> atLatest) {
    public Anchoring {
        Objects.requireNonNull(start, "start");
        byPhone = Set.copyOf(byPhone);
        toTheMinute = Set.copyOf(toTheMinute);
        atLatest = InFileOrder.copyOf(atLatest);
    }

    /** A course that starts with S1, all of whose days are written. */
    public static Anchoring fromS1() {
        return new Anchoring(Anchor.S1, Set.of(), Set.of(), Map.of());
    }
}

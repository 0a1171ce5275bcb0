package cyclepacket.safety;

import cyclepacket.course.CourseDoubt;
import cyclepacket.course.LocalTimes;
import cyclepacket.finding.Place;
import cyclepacket.plan.Protocol;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A local time that a zone's clocks do not show exactly once, with the node that wrote it. */
record DoubtfulTime(Place place, LocalDateTime local, ZoneId zone) {

    /** The times the course could not place, and the visits, which the protocol writes without an offset. */
    static List<DoubtfulTime> all(ComputedPlan plan, CourseDoubt.Kind kind, LocalTimes.Shown shown) {
        List<DoubtfulTime> all = new ArrayList<>();
        for (CourseDoubt doubt : plan.doubts(kind)) {
            String[] parts = doubt.subject().split(" in ", 2);
            all.add(new DoubtfulTime(plan.placeOf(doubt), LocalDateTime.parse(parts[0]), ZoneId.of(parts[1])));
        }
        List<Protocol.Visit> visits = plan.protocol().visits();
        for (int index = 0; index < visits.size(); index++) {
            Place place = plan.inProtocol("/visits/" + index + "/at");
            Optional<LocalTime> clock = visits.get(index).at();
            plan.course()
                    .anchors()
                    .date(visits.get(index).on())
                    .filter(day -> clock.isPresent())
                    .ifPresent(day -> {
                        LocalTime at = clock.orElseThrow();
                        if (LocalTimes.shown(day.atTime(at), plan.clinic().zone()) == shown) {
                            all.add(new DoubtfulTime(
                                    place, day.atTime(at), plan.clinic().zone()));
                        }
                    });
        }
        return all;
    }

    /** The file has room for an offset beside an anchor and a call, not beside a daily time or a visit. */
    boolean takesOffset() {
        return place.pointer().startsWith("/anchors/") || place.pointer().startsWith("/called/");
    }

    String words() {
        return local.toLocalTime() + " on " + Phrases.day(local.toLocalDate()) + " in " + zone;
    }
}

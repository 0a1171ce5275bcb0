package cyclepacket.safety;

import cyclepacket.course.DatedDose;
import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The clocks change between the first dose and the retrieval; hours that were printed hold, and people should know. */
final class ClockChangeRule extends Rule {
    ClockChangeRule() {
        super("CLOCK-CHANGE", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        if (plan.course().doses().isEmpty()) {
            return List.of();
        }
        Instant from = plan.course().doses().get(0).at().toInstant();
        Instant until = until(plan);
        ZoneId home = plan.plan().patient().zone();
        List<Finding> found = new ArrayList<>();
        Set<LocalDate> told = new HashSet<>();
        for (ZoneOffsetTransition change : changes(home, from, until)) {
            told.add(change.getDateTimeBefore().toLocalDate());
            found.add(finding(plan.inPlan("/patient/zone"), home, change));
        }
        ZoneId clinic = plan.clinic().zone();
        for (ZoneOffsetTransition change : changes(clinic, from, until)) {
            if (told.add(change.getDateTimeBefore().toLocalDate())) {
                found.add(finding(plan.inClinic("/zone"), clinic, change));
            }
        }
        return found;
    }

    private static Instant until(ComputedPlan plan) {
        List<DatedDose> doses = plan.course().doses();
        Instant last = doses.get(doses.size() - 1).at().toInstant();
        return plan.course()
                .anchors()
                .retrieval()
                .map(ZonedDateTime::toInstant)
                .filter(last::isBefore)
                .orElse(last);
    }

    private static List<ZoneOffsetTransition> changes(ZoneId zone, Instant from, Instant until) {
        List<ZoneOffsetTransition> changes = new ArrayList<>();
        ZoneOffsetTransition next = zone.getRules().nextTransition(from);
        while (next != null && next.getInstant().isBefore(until)) {
            changes.add(next);
            next = zone.getRules().nextTransition(next.getInstant());
        }
        return changes;
    }

    private Finding finding(Place place, ZoneId zone, ZoneOffsetTransition change) {
        LocalDateTime when = change.getDateTimeBefore();
        String way = change.isGap() ? "forward" : "back";
        return note(
                place,
                "the clocks in " + zone + " are put " + way + " on " + Phrases.day(when.toLocalDate()) + " at "
                        + when.toLocalTime() + ", and every printed hour holds",
                "tell the patient; hours to the retrieval are counted as they pass");
    }
}

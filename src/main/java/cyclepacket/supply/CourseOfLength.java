package cyclepacket.supply;

import cyclepacket.course.Course;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.ledger.Draw;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol.StimulationDays;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The same plan as if stimulation took exactly so many evenings.
 *
 * @param days stimulation evenings, so that T is the day after the last of them
 */
record CourseOfLength(int days, PlanFiles files, Course course) {

    /**
     * Every length that is still possible, the shortest first: none when the trigger has its day, or when today is
     * later than the longest length allows.
     */
    static List<CourseOfLength> all(PlanFiles files) {
        Course planned = Course.of(files);
        Optional<LocalDate> start = planned.anchors().date(Anchor.S1);
        if (start.isEmpty() || planned.anchors().trigger().isPresent()) {
            return List.of();
        }
        StimulationDays usual = files.protocol().stimulationDays();
        // Without a call by today, the trigger is this evening at the earliest.
        long passed =
                ChronoUnit.DAYS.between(start.get(), files.plan().prepared().on());
        int least = (int) Math.min(Math.max(usual.least(), passed), usual.most() + 1L);
        return IntStream.rangeClosed(least, usual.most())
                .mapToObj(days -> of(files, start.get(), days))
                .toList();
    }

    private static CourseOfLength of(PlanFiles files, LocalDate start, int days) {
        Plan.Moment trigger = new Plan.Moment(start.plusDays(days), Optional.of(LocalTime.NOON), Optional.empty());
        PlanFiles dated = files.withPlan(files.plan().withAnchor(Anchor.T, trigger));
        return new CourseOfLength(days, dated, Course.of(dated));
    }

    List<Draw> draws(Medicine medicine) {
        return CycleLedger.settings(files, course, medicine);
    }
}

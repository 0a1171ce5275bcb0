package cyclepacket.supply;

import cyclepacket.course.Course;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol.StimulationDays;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * The course that stock has to last for while nobody has called the trigger: every evening that the protocol may take.
 * A trigger that is only planned can still move, and then nobody at home may stand without medicine.
 *
 * @param files the plan's files, its planned trigger left out
 * @param lastEvening the last evening of stimulation at the longest
 */
record LongestCourse(PlanFiles files, LocalDate lastEvening) {
    /** Empty once the trigger was called and read back, or when the protocol does not say how long it may take. */
    static Optional<LongestCourse> of(PlanFiles files) {
        Course planned = Course.of(files);
        Optional<LocalDate> start = planned.anchors().date(Anchor.S1);
        Optional<StimulationDays> expected = files.protocol().stimulationDays();
        if (start.isEmpty() || expected.isEmpty() || planned.isTriggerCalled()) {
            return Optional.empty();
        }
        LocalDate last = start.get().plusDays(expected.get().most() - 1L);
        boolean isPlannedLater = planned.anchors()
                .date(Anchor.T)
                .filter(trigger -> trigger.isAfter(last.plusDays(1)))
                .isPresent();
        return isPlannedLater
                ? Optional.empty()
                : Optional.of(new LongestCourse(
                        files.withPlan(files.plan().withoutAnchors(Set.of(Anchor.T, Anchor.R))), last));
    }
}

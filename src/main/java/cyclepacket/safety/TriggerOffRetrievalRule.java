package cyclepacket.safety;

import cyclepacket.course.Anchors;
import cyclepacket.finding.Finding;
import cyclepacket.plan.Anchor;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/** The trigger time that was told must be the retrieval minus its hours, to the minute. */
final class TriggerOffRetrievalRule extends Rule {
    TriggerOffRetrievalRule() {
        super("TRIGGER-OFF-RETRIEVAL", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        Anchors anchors = plan.course().anchors();
        Optional<ZonedDateTime> told = anchors.calledTrigger();
        Optional<ZonedDateTime> right = Optional.ofNullable(
                        plan.protocol().triggerBefore().get(Anchor.R))
                .flatMap(before -> anchors.retrieval().map(at -> at.minus(before)))
                .map(at -> at.withZoneSameInstant(plan.plan().patient().zone()));
        if (told.isEmpty()
                || right.isEmpty()
                || told.get().toInstant().equals(right.get().toInstant())) {
            return List.of();
        }
        return List.of(stop(
                plan.inPlan("/called/" + anchors.lastCall(Anchor.T) + "/at"),
                "the trigger was called for " + Phrases.at(told.get()) + ", which is not "
                        + Phrases.hours(
                                plan.protocol().triggerBefore().get(Anchor.R).toMinutes())
                        + " before the retrieval",
                mend(told.get(), right.get(), plan.clinic().zone())));
    }

    private static String mend(ZonedDateTime told, ZonedDateTime right, ZoneId clinic) {
        boolean meantClinicTime =
                told.toLocalDateTime().atZone(clinic).toInstant().equals(right.toInstant());
        String why =
                meantClinicTime ? "the told time is right on the clock of " + clinic + ", not on the patient's; " : "";
        return why + "the right time is " + Phrases.at(right)
                + "; call the patient again, have it read back and write that call";
    }
}

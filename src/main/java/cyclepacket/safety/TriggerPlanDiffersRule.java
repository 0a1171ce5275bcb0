package cyclepacket.safety;

import cyclepacket.course.Trigger;
import cyclepacket.finding.Finding;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.Plan;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/** A planned trigger beside a retrieval that says another time. */
final class TriggerPlanDiffersRule extends Rule {
    TriggerPlanDiffersRule() {
        super("TRIGGER-PLAN-DIFFERS", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        Optional<Plan.Moment> planned =
                Optional.ofNullable(plan.plan().anchors().get(Anchor.T));
        Optional<ZonedDateTime> counted = plan.course().anchors().trigger().map(Trigger::at);
        boolean fromRetrieval = plan.course().anchors().retrieval().isPresent()
                && plan.protocol().triggerBefore().containsKey(Anchor.R);
        if (planned.isEmpty() || counted.isEmpty() || !fromRetrieval || agrees(planned.get(), counted.get())) {
            return List.of();
        }
        return List.of(stop(
                plan.inPlan("/anchors/T"),
                "T under anchors is not the hour that counts back from R, " + Phrases.at(counted.get()),
                "take T out, R gives it; or mend R"));
    }

    private static boolean agrees(Plan.Moment planned, ZonedDateTime counted) {
        return planned.date().equals(counted.toLocalDate())
                && planned.time()
                        .map(time -> time.equals(counted.toLocalTime()))
                        .orElse(true);
    }
}

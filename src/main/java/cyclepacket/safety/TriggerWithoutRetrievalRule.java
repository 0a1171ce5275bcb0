package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Anchor;
import java.util.List;

/** A called trigger that cannot be checked, because the plan does not know the retrieval. */
final class TriggerWithoutRetrievalRule extends Rule {
    TriggerWithoutRetrievalRule() {
        super("TRIGGER-WITHOUT-RETRIEVAL", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        int call = plan.course().anchors().lastCall(Anchor.T);
        boolean counts = plan.protocol().triggerBefore().containsKey(Anchor.R);
        if (call < 0 || !counts || plan.plan().anchors().containsKey(Anchor.R)) {
            return List.of();
        }
        return List.of(stop(
                plan.inPlan("/called/" + call),
                "the trigger is called, and the plan has no retrieval to check its hour against",
                "write R under anchors with date and hour"));
    }
}

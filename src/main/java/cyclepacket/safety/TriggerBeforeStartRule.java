package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.util.List;

/** A trigger on or before the first stimulation day leaves nothing to print. */
final class TriggerBeforeStartRule extends Rule {
    TriggerBeforeStartRule() {
        super("TRIGGER-BEFORE-START", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return TriggerDayUnusualRule.evenings(plan).stream()
                .filter(count -> count <= 0)
                .map(count -> stop(
                        plan.triggerPlace(),
                        "the trigger falls on or before the first day of stimulation",
                        "check month and year of R and of S1"))
                .toList();
    }
}

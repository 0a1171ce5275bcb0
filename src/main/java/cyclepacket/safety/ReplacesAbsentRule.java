package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.util.List;

/** From issue 2 on the packet says which issue to take off the door. */
final class ReplacesAbsentRule extends Rule {
    ReplacesAbsentRule() {
        super("REPLACES-ABSENT", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        if (plan.plan().issue() == 1 || plan.plan().replaces().isPresent()) {
            return List.of();
        }
        return List.of(stop(
                plan.inPlan("/issue"),
                "issue " + plan.plan().issue() + " does not say which issue it replaces",
                "write replaces with the number of the issue on the door now"));
    }
}

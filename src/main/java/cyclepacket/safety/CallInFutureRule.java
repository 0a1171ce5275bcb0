package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** A call is written down after it was made. */
final class CallInFutureRule extends Rule {
    CallInFutureRule() {
        super("CALL-IN-FUTURE", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Plan.Call> called = plan.plan().called();
        List<Finding> found = new ArrayList<>();
        for (int line = 0; line < called.size(); line++) {
            if (called.get(line).on().isAfter(plan.preparedOn())) {
                found.add(stop(
                        plan.inPlan("/called/" + line + "/on"),
                        "this call is dated " + Phrases.day(called.get(line).on())
                                + ", after the day the packet was prepared",
                        "write the day the call was made, or the right day under prepared"));
            }
        }
        return found;
    }
}

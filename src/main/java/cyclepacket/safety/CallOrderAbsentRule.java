package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** A call that made a day an instruction names the order behind it. */
final class CallOrderAbsentRule extends Rule {
    CallOrderAbsentRule() {
        super("CALL-ORDER-ABSENT", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Plan.Call> called = plan.plan().called();
        List<Finding> found = new ArrayList<>();
        for (int line = 0; line < called.size(); line++) {
            if (OrderReferenceAbsentRule.isAbsent(called.get(line).order())) {
                found.add(warn(
                        plan.inPlan("/called/" + line),
                        "this call of " + called.get(line).anchor() + " names no order",
                        "write order with the reference of the prescriber's order"));
            }
        }
        return found;
    }
}

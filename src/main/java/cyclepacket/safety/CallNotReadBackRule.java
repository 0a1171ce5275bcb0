package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** A call that was not read back may have been heard wrong; the anchor does not count as called. */
final class CallNotReadBackRule extends Rule {
    CallNotReadBackRule() {
        super("CALL-NOT-READ-BACK", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Plan.Call> called = plan.plan().called();
        List<Finding> found = new ArrayList<>();
        for (int line = 0; line < called.size(); line++) {
            Plan.Call call = called.get(line);
            boolean holds = plan.course().anchors().lastCall(call.anchor()) == line;
            if (holds && !call.readBack()) {
                found.add(warn(
                        plan.inPlan("/called/" + line + "/read-back"),
                        "the call of " + call.anchor() + " was not read back, so it does not count as called",
                        "call again, have it read back and write that call"));
            }
        }
        return found;
    }
}

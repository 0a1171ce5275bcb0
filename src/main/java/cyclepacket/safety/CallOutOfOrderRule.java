package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Plan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Calls stand oldest first, because the last line of an anchor is the one that holds. */
final class CallOutOfOrderRule extends Rule {
    CallOutOfOrderRule() {
        super("CALL-OUT-OF-ORDER", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Plan.Call> called = plan.plan().called();
        List<Finding> found = new ArrayList<>();
        LocalDate latest = LocalDate.MIN;
        for (int line = 0; line < called.size(); line++) {
            LocalDate on = called.get(line).on();
            if (on.isBefore(latest)) {
                found.add(stop(
                        plan.inPlan("/called/" + line + "/on"),
                        "the call of " + Phrases.day(on) + " stands after the call of " + Phrases.day(latest),
                        "put the calls in order, oldest first, or mend the date"));
            }
            latest = on.isAfter(latest) ? on : latest;
        }
        return found;
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Every dose goes back to an order that can be found. */
final class OrderReferenceAbsentRule extends Rule {
    OrderReferenceAbsentRule() {
        super("ORDER-REFERENCE-ABSENT", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        if (isAbsent(plan.plan().order().reference())) {
            found.add(stop(plan.inPlan("/order"), "the order has no reference", "write reference from the order"));
        }
        for (String medicine : new TreeSet<>(plan.plan().doses().keySet())) {
            List<Plan.DoseLine> lines = plan.plan().doses().get(medicine);
            for (int line = 0; line < lines.size(); line++) {
                if (isAbsent(lines.get(line).order())) {
                    found.add(stop(
                            plan.inPlan("/doses/" + medicine + "/" + line),
                            "this dose line has no order",
                            "write order with the reference of the prescriber's order"));
                }
            }
        }
        return found;
    }

    static boolean isAbsent(Optional<String> reference) {
        return reference.filter(text -> !text.isBlank()).isEmpty();
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A clinic that lets no two part-used containers serve one dose, and a plan that has two of them in a row. */
final class PartUsedChainedRule extends Rule {
    PartUsedChainedRule() {
        super("PART-USED-CHAINED", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        if (plan.clinic().rules().chainPartUsed()) {
            return List.of();
        }
        Set<String> seen = new HashSet<>();
        return OpenedStock.all(plan).stream()
                .filter(opened ->
                        !seen.add(opened.medicine().id()) || opened.stock().count() > 1)
                .map(opened -> stop(
                        plan.inPlan("/on-hand/" + opened.medicine().id() + "/" + opened.index()),
                        "a second part-used " + opened.medicine().id()
                                + " is at home, and the clinic lets no two serve one dose",
                        "keep one of them and take the other line out"))
                .toList();
    }
}

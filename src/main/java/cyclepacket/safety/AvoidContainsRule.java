package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Medicine;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A medicine contains something the patient avoids. It is a warning and no stop, so that a clinic with a prescriber's
 * answer writes it down instead of taking the allergy out of the plan.
 */
final class AvoidContainsRule extends Rule {
    AvoidContainsRule() {
        super("AVOID-CONTAINS", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<String> avoid = plan.plan().avoid();
        List<Finding> found = new ArrayList<>();
        for (Medicine medicine : plan.files().medicines().values()) {
            Set<String> contents =
                    medicine.contains().stream().map(Phrases::plain).collect(Collectors.toSet());
            for (int index = 0; index < avoid.size(); index++) {
                if (contents.contains(Phrases.plain(avoid.get(index)))) {
                    found.add(warn(
                            plan.inPlan("/avoid/" + index),
                            medicine.id() + " contains " + avoid.get(index) + ", which the patient avoids",
                            "ask the prescriber and the pharmacist before any teaching"));
                }
            }
        }
        return found;
    }
}

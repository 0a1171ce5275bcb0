package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Medicine;
import java.util.ArrayList;
import java.util.List;
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
        for (int index = 0; index < avoid.size(); index++) {
            String avoided = avoid.get(index);
            String holders = plan.files().medicines().values().stream()
                    .filter(medicine -> contains(medicine, avoided))
                    .map(Medicine::id)
                    .collect(Collectors.joining(" and "));
            if (!holders.isEmpty()) {
                found.add(warn(
                        plan.inPlan("/avoid/" + index),
                        "the patient avoids " + avoided + ", which is in " + holders,
                        "ask the prescriber and the pharmacist before any teaching"));
            }
        }
        return found;
    }

    private static boolean contains(Medicine medicine, String avoided) {
        return medicine.contains().stream().map(Phrases::plain).anyMatch(Phrases.plain(avoided)::equals);
    }
}

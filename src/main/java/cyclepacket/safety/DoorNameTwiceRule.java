package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Medicine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Two medicines with one name on the door page cannot be told apart. */
final class DoorNameTwiceRule extends Rule {
    DoorNameTwiceRule() {
        super("DOOR-NAME-TWICE", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        Map<String, String> seen = new HashMap<>();
        List<Finding> found = new ArrayList<>();
        for (Medicine medicine : plan.files().medicines().values()) {
            String other = seen.putIfAbsent(Phrases.plain(medicine.doorName()), medicine.id());
            if (other != null) {
                found.add(stop(
                        plan.inMedicine(medicine.id(), "/door-name"),
                        "the door page would call both " + other + " and " + medicine.id() + " \"" + medicine.doorName()
                                + "\"",
                        "give one of them another door-name"));
            }
        }
        return found;
    }
}

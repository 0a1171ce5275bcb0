package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Medicine;
import java.util.ArrayList;
import java.util.List;

/** The door page hangs in a kitchen: its names must not say what they are for. */
final class DoorNameRevealsRule extends Rule {
    DoorNameRevealsRule() {
        super("DOOR-NAME-REVEALS", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (Medicine medicine : plan.files().medicines().values()) {
            String shown = Phrases.plain(medicine.doorName());
            List.of("trigger", Phrases.plain(medicine.name()), Phrases.plain(medicine.purpose())).stream()
                    .filter(shown::contains)
                    .findFirst()
                    .ifPresent(word -> found.add(stop(
                            plan.inMedicine(medicine.id(), "/door-name"),
                            "the door page would show \"" + word + "\" to anyone who opens the refrigerator",
                            "choose a plain door-name, for example evening pen")));
        }
        return found;
    }
}

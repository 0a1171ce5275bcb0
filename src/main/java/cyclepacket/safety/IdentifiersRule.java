package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * Two identifiers of the patient are needed: the name and one of birth date and number. Source: Joint Commission,
 * National Patient Safety Goal NPSG.01.01.01, element of performance 1.
 */
final class IdentifiersRule extends Rule {
    IdentifiersRule() {
        super("IDENTIFIERS", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        Plan.Patient patient = plan.plan().patient();
        boolean hasSecond = patient.born().isPresent()
                || patient.number().filter(number -> !number.isBlank()).isPresent();
        List<Finding> found = new ArrayList<>();
        if (patient.name().isBlank()) {
            found.add(stop(plan.inPlan("/patient/name"), "the patient has no name", "write the name in full"));
        }
        if (!hasSecond) {
            found.add(stop(
                    plan.inPlan("/patient"),
                    "the patient has one identifier, and two are needed",
                    "write born, number, or both"));
        }
        return found;
    }
}

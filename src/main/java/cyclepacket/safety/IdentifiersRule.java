package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * Two identifiers of the patient are needed: the name and one of birth date and number. Source: Joint Commission,
 * National Patient Safety Goal NPSG.01.01.01, element of performance 1. A birth date that cannot be, or that stands there
 * twice, identifies nobody.
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
        patient.born()
                .filter(born -> born.isAfter(plan.preparedOn()))
                .ifPresent(born -> found.add(stop(
                        plan.inPlan("/patient/born"),
                        "this birth date is later than the day the packet was prepared",
                        "copy the birth date from the patient's record")));
        if (isOneIdentifierTwice(patient)) {
            found.add(stop(
                    plan.inPlan("/patient/number"),
                    "this number is the birth date again, and two identifiers are needed",
                    "write the number that the clinic gave the patient, or take number out"));
        }
        return found;
    }

    private static boolean isOneIdentifierTwice(Plan.Patient patient) {
        return patient.born()
                .flatMap(born -> patient.number().filter(new BirthDateSpelling(born)::matches))
                .isPresent();
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.util.List;

/** The number below which a remainder is small holds for one unit only: 12.5 units say nothing about micrograms. */
final class SmallRemainderAbsentRule extends Rule {
    SmallRemainderAbsentRule() {
        super("SMALL-REMAINDER-ABSENT", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return plan.files().medicines().values().stream()
                .filter(medicine -> medicine.device().pen().isPresent())
                .filter(medicine -> plan.clinic()
                        .rules()
                        .smallRemainder()
                        .belowIn(medicine.unit())
                        .isEmpty())
                .map(medicine -> stop(
                        plan.inClinic("/house-rules/small-remainder"),
                        "the clinic file does not say which remainder is small for " + medicine.id()
                                + ", which counts in " + medicine.unit().word(),
                        "write below-" + medicine.unit().word() + " beside below"))
                .toList();
    }
}

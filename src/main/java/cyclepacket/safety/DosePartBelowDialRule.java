package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.DoseSplit;
import cyclepacket.plan.Dial;
import cyclepacket.plan.HouseRules;
import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.List;

/** A dose that could be split, but whose split by the clinic's rule leaves a part below the smallest setting. */
final class DosePartBelowDialRule extends Rule {
    DosePartBelowDialRule() {
        super("DOSE-PART-BELOW-DIAL", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        HouseRules.SplitDose split = plan.clinic().rules().splitDose();
        List<Finding> found = new ArrayList<>();
        for (OrderedAmount ordered : OrderedAmount.all(plan)) {
            ordered.dial()
                    .filter(dial -> leavesSmallPart(ordered.amount(), dial, split))
                    .ifPresent(dial -> found.add(stop(
                            ordered.place(),
                            ordered.amount() + " split by the clinic's rule leaves a part below the smallest setting, "
                                    + dial.least(),
                            NearestDoses.of(ordered.amount(), dial, split).question())));
        }
        return found;
    }

    private static boolean leavesSmallPart(Dose amount, Dial dial, HouseRules.SplitDose split) {
        return amount.isMoreThan(dial.most())
                && amount.isMultipleOf(dial.step())
                && !DoseTooManySettingsRule.needsTooMany(amount, dial)
                && DoseAboveDialRule.canBeSplit(amount, dial)
                && DoseSplit.settings(amount, dial, split).isEmpty();
    }
}

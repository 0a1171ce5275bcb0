package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Dial;
import cyclepacket.plan.HouseRules;
import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.List;

/** A dose above the dial's most that no number of settings can make, whatever the house rule. */
final class DoseAboveDialRule extends Rule {
    DoseAboveDialRule() {
        super("DOSE-ABOVE-DIAL", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        HouseRules.SplitDose split = plan.clinic().rules().splitDose();
        List<Finding> found = new ArrayList<>();
        for (OrderedAmount ordered : OrderedAmount.all(plan)) {
            ordered.dial()
                    .filter(dial -> ordered.amount().isMoreThan(dial.most()))
                    .filter(dial -> ordered.amount().isMultipleOf(dial.step()))
                    .filter(dial -> !canBeSplit(ordered.amount(), dial))
                    .filter(dial -> !DoseTooManySettingsRule.needsTooMany(ordered.amount(), dial))
                    .ifPresent(dial -> found.add(stop(
                            ordered.place(),
                            ordered.amount() + " is above the largest setting, " + dial.most()
                                    + ", and cannot be split into settings of " + dial.least() + " or more",
                            NearestDoses.of(ordered.amount(), dial, split).question())));
        }
        return found;
    }

    /** Whether some number of settings, each from least to most, adds up to the amount. */
    static boolean canBeSplit(Dose amount, Dial dial) {
        long size = amount.milliUnits();
        long most = dial.most().milliUnits();
        long fewest = (size + most - 1) / most;
        return fewest * dial.least().milliUnits() <= size;
    }
}

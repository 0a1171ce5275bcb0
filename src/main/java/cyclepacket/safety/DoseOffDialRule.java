package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.HouseRules;
import java.util.ArrayList;
import java.util.List;

/** A dose that is no multiple of the dial's step cannot be set; nothing is rounded for anyone. */
final class DoseOffDialRule extends Rule {
    DoseOffDialRule() {
        super("DOSE-OFF-DIAL", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        HouseRules.SplitDose split = plan.clinic().rules().splitDose();
        List<Finding> found = new ArrayList<>();
        for (OrderedAmount ordered : OrderedAmount.all(plan)) {
            ordered.dial()
                    .filter(dial -> !ordered.amount().isLessThan(dial.least()))
                    .filter(dial -> !ordered.amount().isMultipleOf(dial.step()))
                    .filter(dial -> !DoseTooManySettingsRule.needsTooMany(ordered.amount(), dial))
                    .ifPresent(dial -> found.add(stop(
                            ordered.place(),
                            ordered.amount() + " is not a setting of this pen",
                            NearestDoses.of(ordered.amount(), dial, split).question())));
        }
        return found;
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/** A dose below the smallest setting, zero included, cannot be set. */
final class DoseBelowDialRule extends Rule {
    DoseBelowDialRule() {
        super("DOSE-BELOW-DIAL", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (OrderedAmount ordered : OrderedAmount.all(plan)) {
            ordered.dial()
                    .filter(dial -> ordered.amount().isLessThan(dial.least()))
                    .ifPresent(dial -> found.add(stop(
                            ordered.place(),
                            ordered.amount() + " is below the smallest setting of this pen, " + dial.least(),
                            "ask the prescriber; this pen gives " + dial.least() + " or more")));
        }
        return found;
    }
}

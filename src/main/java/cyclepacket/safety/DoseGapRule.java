package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.util.List;

/** The plan itself leaves too many hours, or an evening, between two doses or before the trigger. */
final class DoseGapRule extends Rule {
    DoseGapRule() {
        super("DOSE-GAP", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return DoseGap.planned(plan).stream()
                .map(gap -> stop(gap.place(), gap.words(), "ask the prescriber how to close the gap"))
                .toList();
    }
}

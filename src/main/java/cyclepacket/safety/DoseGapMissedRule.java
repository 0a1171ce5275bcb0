package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.util.List;

/** A missed evening left too many hours between two doses; a fact cannot be refused, so it is warned about. */
final class DoseGapMissedRule extends Rule {
    DoseGapMissedRule() {
        super("DOSE-GAP-MISSED", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return DoseGap.happened(plan).stream()
                .map(gap -> warn(
                        plan.inPlan("/record/" + gap.missed().orElseThrow()), gap.words(), "tell the prescriber today"))
                .toList();
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.HouseRules;
import java.util.List;

/**
 * The hours from trigger to retrieval lie outside the clinic's inner pair. The sample pair, 34 to 38 hours, is the
 * clinic's own; trials found 36 and 38 hours alike (Reprod Biomed Online 2015), and 36 is the usual figure.
 */
final class TriggerLeadUnusualRule extends Rule {
    TriggerLeadUnusualRule() {
        super("TRIGGER-LEAD-UNUSUAL", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        HouseRules.LeadHours hours = plan.clinic().rules().triggerLead();
        return TriggerLead.of(plan).stream()
                .filter(lead -> lead.isOutside(hours.warnLeast(), hours.warnMost()))
                .filter(lead -> !lead.isOutside(hours.stopLeast(), hours.stopMost()))
                .map(lead -> warn(
                        lead.place(),
                        "the trigger is " + Phrases.hours(lead.minutes()) + " before the retrieval; the clinic expects "
                                + TriggerLead.words(hours.warnLeast(), hours.warnMost()),
                        "ask the prescriber"))
                .toList();
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.HouseRules;
import java.util.List;

/** The hours from trigger to retrieval lie outside the clinic's outer pair; the sample pair is 30 to 42 hours. */
final class TriggerLeadLimitRule extends Rule {
    TriggerLeadLimitRule() {
        super("TRIGGER-LEAD-LIMIT", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        HouseRules.LeadHours hours = plan.clinic().rules().triggerLead();
        return TriggerLead.of(plan).stream()
                .filter(lead -> lead.isOutside(hours.stopLeast(), hours.stopMost()))
                .map(lead -> stop(
                        lead.place(),
                        "the trigger is " + Phrases.hours(lead.minutes())
                                + " before the retrieval; the clinic prints only "
                                + TriggerLead.words(hours.stopLeast(), hours.stopMost()),
                        "read date, hour and zone of both again and ask the prescriber"))
                .toList();
    }
}

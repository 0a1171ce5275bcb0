package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.time.LocalDate;
import java.util.List;

/** An expired approval stops printing. */
final class ApprovalEndedRule extends Rule {
    ApprovalEndedRule() {
        super("APPROVAL-ENDED", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        LocalDate last = plan.clinic().approved().lastDay();
        if (!last.isBefore(plan.preparedOn())) {
            return List.of();
        }
        return List.of(stop(
                plan.inClinic("/approved/until"),
                "the approval of the clinic file ended on " + Phrases.day(last),
                "have the clinic's rules read and approved again"));
    }
}

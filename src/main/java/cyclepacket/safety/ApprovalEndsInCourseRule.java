package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.time.LocalDate;
import java.util.List;

/** An approval that ends before the last possible dose. */
final class ApprovalEndsInCourseRule extends Rule {
    ApprovalEndsInCourseRule() {
        super("APPROVAL-ENDS-IN-COURSE", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        LocalDate last = plan.clinic().approved().lastDay();
        return plan.lastPossibleDay().stream()
                .filter(dose -> !last.isBefore(plan.preparedOn()) && last.isBefore(dose))
                .map(dose -> stop(
                        plan.inClinic("/approved/until"),
                        "the approval of the clinic file ends on " + Phrases.day(last)
                                + ", before the last possible dose on " + Phrases.day(dose),
                        "have the clinic's rules read and approved again"))
                .toList();
    }
}

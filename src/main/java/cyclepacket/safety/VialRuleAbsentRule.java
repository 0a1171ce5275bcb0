package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.Measuring;
import java.util.List;

/** Through how many vials one diluent may go is the clinic's to write; there is no usual number. */
final class VialRuleAbsentRule extends Rule {
    VialRuleAbsentRule() {
        super("VIAL-RULE-ABSENT", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return MeasuredAmount.with(plan, Measuring.Hitch.NO_VIAL_RULE).stream()
                .map(amount -> amount.ordered().medicine().id())
                .distinct()
                .map(medicine -> stop(
                        plan.inClinic("/house-rules/vials-per-diluent"),
                        "the clinic file does not say through how many vials of " + medicine + " one diluent may go",
                        "write it under vials-per-diluent"))
                .toList();
    }
}

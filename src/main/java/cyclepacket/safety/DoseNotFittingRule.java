package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.Measuring;
import java.util.List;

/** A dose whose volume is more than its syringe holds; how it may be divided is for the prescriber to say. */
final class DoseNotFittingRule extends Rule {
    DoseNotFittingRule() {
        super("DOSE-NOT-FITTING", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return MeasuredAmount.with(plan, Measuring.Hitch.DOES_NOT_FIT).stream()
                .map(amount -> stop(
                        amount.place(),
                        amount.dose() + " does not fit into " + amount.syringe().id() + ", which holds "
                                + amount.syringe().capacity(),
                        "name a larger syringe in the medicine file, and teach with that one" + amount.most()))
                .toList();
    }
}

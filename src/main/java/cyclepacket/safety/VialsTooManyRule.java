package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.Measuring;
import java.util.List;

/** A dose that needs more vials than one diluent may go through in this clinic. */
final class VialsTooManyRule extends Rule {
    VialsTooManyRule() {
        super("VIALS-TOO-MANY", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return MeasuredAmount.with(plan, Measuring.Hitch.TOO_MANY_VIALS).stream()
                .map(amount -> stop(
                        amount.place(),
                        amount.dose() + " needs "
                                + Measuring.vials(amount.ordered().medicine(), amount.dose())
                                + " vials, and the clinic lets one diluent go through "
                                + plan.clinic()
                                        .rules()
                                        .forms()
                                        .vialsPerDiluent()
                                        .get(amount.ordered().medicine().id()),
                        "ask the prescriber, or mend vials-per-diluent in the clinic file"))
                .toList();
    }
}

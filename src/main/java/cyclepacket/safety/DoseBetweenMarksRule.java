package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.Measuring;
import java.util.List;

/** A dose whose volume lies between two lines of its syringe cannot be drawn; nothing is rounded for anyone. */
final class DoseBetweenMarksRule extends Rule {
    DoseBetweenMarksRule() {
        super("DOSE-BETWEEN-MARKS", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return MeasuredAmount.with(plan, Measuring.Hitch.BETWEEN_MARKS).stream()
                .map(amount -> stop(
                        amount.place(),
                        amount.dose() + " lies between two marks of "
                                + amount.syringe().id(),
                        amount.question()))
                .toList();
    }
}

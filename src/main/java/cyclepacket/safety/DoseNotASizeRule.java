package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Medicine;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A ready syringe is given whole: its dose is one of the sizes it is sold in. */
final class DoseNotASizeRule extends Rule {
    DoseNotASizeRule() {
        super("DOSE-NOT-A-SIZE", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (OrderedAmount ordered : OrderedAmount.all(plan)) {
            Medicine medicine = ordered.medicine();
            boolean isSyringe = medicine.device().readySyringe().isPresent();
            if (isSyringe && medicine.sizeLabelled(ordered.amount()).isEmpty()) {
                String sizes = medicine.sizes().stream()
                        .map(size -> size.label().toString())
                        .collect(Collectors.joining(", "));
                found.add(stop(
                        ordered.place(),
                        ordered.amount() + " is not a size of " + medicine.id()
                                + ", and a ready syringe is given whole",
                        "it comes in " + sizes + "; ask the prescriber which one"));
            }
        }
        return found;
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Medicine;
import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A dose as large as a whole pen or cartridge: where a pen holds several doses, this is how the whole of it gets injected. */
final class DoseWholeContainerRule extends Rule {
    DoseWholeContainerRule() {
        super("DOSE-WHOLE-CONTAINER", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (OrderedAmount ordered : OrderedAmount.all(plan)) {
            Optional<Dose> smallest = ordered.medicine().sizes().stream()
                    .map(Medicine.Size::label)
                    .min(Dose::compareTo)
                    .filter(label -> ordered.dial().isPresent());
            smallest.filter(label -> !ordered.amount().isLessThan(label))
                    .ifPresent(label -> found.add(warn(
                            ordered.place(),
                            ordered.amount() + " is the whole of a pen or cartridge of " + label
                                    + ", which holds several doses",
                            "read the order again: is it the dose of one evening, and in "
                                    + ordered.amount().unit().word() + "?")));
        }
        return found;
    }
}

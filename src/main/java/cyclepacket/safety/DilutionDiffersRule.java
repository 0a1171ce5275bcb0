package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.Measure;
import cyclepacket.plan.DilutedVial;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the mark of a dose really holds, worked out a second time from the stock and its volumes, without the label. */
final class DilutionDiffersRule extends Rule {
    DilutionDiffersRule() {
        super("DILUTION-DIFFERS", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (MeasuredAmount amount : MeasuredAmount.all(plan)) {
            Optional<DilutedVial> vial = amount.ordered()
                    .medicine()
                    .device()
                    .stockVial()
                    .filter(DilutedVial.class::isInstance)
                    .map(DilutedVial.class::cast);
            Optional<Measure> measure = amount.measuring().measure(amount.dose());
            if (vial.isPresent() && measure.isPresent()) {
                SecondDilution second = SecondDilution.at(measure.get().mark(), vial.get());
                if (!second.gives(amount.dose())) {
                    found.add(stop(
                            plan.inMedicine(amount.ordered().medicine().id(), "/strength"),
                            "the label's strength puts " + amount.dose() + " on the "
                                    + measure.get().mark() + ", and stock and volumes put " + second.words()
                                    + " there",
                            "ask the pharmacy for stock, volumes and label; a point or a zero may have moved"));
                }
            }
        }
        return found.stream().distinct().toList();
    }
}

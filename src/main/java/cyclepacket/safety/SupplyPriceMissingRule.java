package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Medicine;
import cyclepacket.supply.SupplyDoubt;
import cyclepacket.supply.SupplyLine;
import java.util.ArrayList;
import java.util.List;

/** Some sizes have a price and some have none, so that costs cannot be compared. */
final class SupplyPriceMissingRule extends Rule {
    SupplyPriceMissingRule() {
        super("SUPPLY-PRICE-MISSING", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (SupplyLine line : plan.supply().lines()) {
            line.purchase().doubts().stream()
                    .filter(doubt -> doubt.kind() == SupplyDoubt.Kind.PRICE_MISSING)
                    .map(doubt -> finding(plan, line.medicine(), doubt.subject()))
                    .forEach(found::add);
        }
        return found;
    }

    private Finding finding(ComputedPlan plan, Medicine medicine, String size) {
        List<String> labels =
                medicine.sizes().stream().map(one -> one.label().toString()).toList();
        return note(
                plan.inMedicine(medicine.id(), "/sizes/" + labels.indexOf(size)),
                "this size has no price and others have one, so what to buy of " + medicine.id()
                        + " is chosen by the amount on the labels",
                "write its price, or take the others out");
    }
}

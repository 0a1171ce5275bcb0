package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.supply.SupplyDoubt;
import cyclepacket.supply.SupplyLine;
import java.util.ArrayList;
import java.util.List;

/** Something is missing, and no set of containers as sold covers it. */
final class SupplyNoSetRule extends Rule {
    SupplyNoSetRule() {
        super("SUPPLY-NO-SET", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (SupplyLine line : plan.supply().lines()) {
            line.purchase().doubts().stream()
                    .filter(doubt -> doubt.kind() != SupplyDoubt.Kind.PRICE_MISSING)
                    .distinct()
                    .map(doubt -> finding(plan, line.medicine().id(), doubt))
                    .forEach(found::add);
        }
        return found;
    }

    private Finding finding(ComputedPlan plan, String medicine, SupplyDoubt doubt) {
        String why = switch (doubt.kind()) {
            case NO_SIZE -> "no size of " + medicine + " as sold gives " + doubt.subject();
            case TOO_MANY -> doubt.subject() + " of " + medicine + " takes more containers than anybody would buy";
            case PRICE_MISSING -> "a price of " + medicine + " is missing";
        };
        return warn(
                plan.inMedicine(medicine, "/sizes"),
                why + ", so the packet cannot say what to buy",
                "check the sizes and the dose, and ask the pharmacist");
    }
}

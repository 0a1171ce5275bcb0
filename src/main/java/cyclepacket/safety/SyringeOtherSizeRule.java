package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Plan;
import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** A ready syringe at home in a size that nobody ordered could be injected by mistake. */
final class SyringeOtherSizeRule extends Rule {
    SyringeOtherSizeRule() {
        super("SYRINGE-OTHER-SIZE", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<OrderedAmount> ordered = OrderedAmount.all(plan);
        List<Finding> found = new ArrayList<>();
        for (Medicine medicine : plan.files().medicines().values()) {
            Set<Dose> amounts = ordered.stream()
                    .filter(amount -> amount.medicine().id().equals(medicine.id()))
                    .map(OrderedAmount::amount)
                    .collect(Collectors.toSet());
            List<Plan.Stock> stock = plan.plan().onHand().getOrDefault(medicine.id(), List.of());
            boolean isSyringe = medicine.device().readySyringe().isPresent() && !amounts.isEmpty();
            for (int line = 0; isSyringe && line < stock.size(); line++) {
                if (!amounts.contains(stock.get(line).size())) {
                    found.add(stop(
                            plan.inPlan("/on-hand/" + medicine.id() + "/" + line + "/size"),
                            "no order is for " + stock.get(line).size() + ", and a ready syringe is given whole",
                            "have the patient set it aside and take the line out, or ask the prescriber"));
                }
            }
        }
        return found;
    }
}

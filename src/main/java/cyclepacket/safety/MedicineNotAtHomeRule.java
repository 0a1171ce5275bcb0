package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Protocol;
import java.util.List;

/** A medicine whose day nobody knows yet, such as the trigger, and of which none is at home. */
final class MedicineNotAtHomeRule extends Rule {
    MedicineNotAtHomeRule() {
        super("MEDICINE-NOT-AT-HOME", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return plan.protocol().rows().stream()
                .map(Protocol.Row::medicine)
                .distinct()
                .filter(medicine -> plan.plan().onHand().getOrDefault(medicine, List.of()).stream()
                        .noneMatch(stock -> stock.discarded().isEmpty()))
                // A medicine with dated doses is short by the count of its supply, which says so with dates.
                .filter(medicine -> plan.course().dosesOf(medicine).isEmpty())
                .map(medicine -> warn(
                        plan.inPlan("/on-hand/" + medicine),
                        "no " + medicine + " is at home, and its day may be called at short notice",
                        "have it at home before the last visit"))
                .toList();
    }
}

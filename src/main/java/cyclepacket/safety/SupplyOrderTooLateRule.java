package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.supply.SupplyLine;
import java.util.List;

/** The last hour at which an order would surely come in time is over. */
final class SupplyOrderTooLateRule extends Rule {
    SupplyOrderTooLateRule() {
        super("SUPPLY-ORDER-TOO-LATE", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return plan.supply().lines().stream()
                .filter(SupplyLine::isShort)
                .filter(line -> isTooLate(plan, line))
                .map(line -> warn(
                        plan.inPlan("/on-hand/" + line.medicine().id()),
                        line.lastOrder()
                                .map(last -> "the last hour to order "
                                        + line.medicine().id() + " was " + Phrases.at(last))
                                .orElse("no order of " + line.medicine().id() + " can surely come in time"),
                        "call the pharmacy and the prescriber today"))
                .toList();
    }

    static boolean isTooLate(ComputedPlan plan, SupplyLine line) {
        return line.lastOrder()
                .map(last -> last.toLocalDate().isBefore(plan.preparedOn()))
                .orElse(true);
    }
}

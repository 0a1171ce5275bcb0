package cyclepacket.safety;

import cyclepacket.course.DatedVisit;
import cyclepacket.finding.Finding;
import cyclepacket.supply.SupplyLine;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The order must be placed before the next visit can change the dose, so somebody has to decide now. */
final class SupplyOrderBeforeVisitRule extends Rule {
    SupplyOrderBeforeVisitRule() {
        super("SUPPLY-ORDER-BEFORE-VISIT", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        Optional<ZonedDateTime> visit = plan.course().nextVisit().map(DatedVisit::at);
        if (visit.isEmpty()) {
            return List.of();
        }
        List<Finding> found = new ArrayList<>();
        for (SupplyLine line : plan.supply().lines()) {
            line.lastOrder()
                    .filter(last -> !SupplyOrderTooLateRule.isTooLate(plan, line))
                    .filter(last -> last.toInstant().isBefore(visit.get().toInstant()))
                    .ifPresent(last -> found.add(warn(
                            plan.inPlan("/on-hand/" + line.medicine().id()),
                            "the last hour to order " + line.medicine().id() + ", " + Phrases.at(last)
                                    + ", is before the next visit, " + Phrases.at(visit.get()),
                            "ask the prescriber now how much to order")));
        }
        return found;
    }
}

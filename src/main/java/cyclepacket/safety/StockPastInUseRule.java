package cyclepacket.safety;

import cyclepacket.course.DatedDose;
import cyclepacket.finding.Finding;
import cyclepacket.plan.Medicine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A container begun earlier whose in-use days are over: it must not be planned in. The days are the product's own (USP
 * chapter 797 names 28 for preserved multi-dose containers unless the maker says otherwise).
 */
final class StockPastInUseRule extends Rule {
    StockPastInUseRule() {
        super("STOCK-PAST-IN-USE", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (OpenedStock opened : OpenedStock.all(plan)) {
            opened.lastUsable(plan.clinic().rules().inUseDayOne())
                    .filter(last -> last.isBefore(firstUse(plan, opened.medicine())))
                    .ifPresent(last -> found.add(stop(
                            opened.place(plan, "opened"),
                            "the in-use days of this " + opened.medicine().id() + " end on " + Phrases.day(last)
                                    + ", before its first dose here",
                            "have it thrown away and take the line out")));
        }
        return found;
    }

    private static LocalDate firstUse(ComputedPlan plan, Medicine medicine) {
        return plan.course().dosesOf(medicine.id()).stream()
                .map(DatedDose::date)
                .min(LocalDate::compareTo)
                .orElse(plan.preparedOn());
    }
}

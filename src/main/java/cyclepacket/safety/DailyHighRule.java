package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Medicine;
import java.util.List;

/** A day above the amount that the medicine file wants to be asked about. */
final class DailyHighRule extends Rule {
    DailyHighRule() {
        super("DAILY-HIGH", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<DailyTotal> high = DailyTotal.all(plan).stream()
                .filter(day -> day.isAbove(Medicine.DailyLimit::warnAbove))
                // What was given is a fact: above the ceiling it is still only warned about.
                .filter(day -> day.isOver() || !day.isAbove(Medicine.DailyLimit::stopAbove))
                .toList();
        return DailyTotal.firstOfEachPlace(high).stream()
                .map(day -> warn(
                        day.place(),
                        day.total() + (day.isOver() ? " given on " : " on ") + Phrases.day(day.date())
                                + " is more than the "
                                + day.medicine().daily().orElseThrow().warnAbove()
                                + " a day that the medicine file warns above",
                        day.isOver() ? "tell the prescriber" : "ask the prescriber"))
                .toList();
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Medicine;
import java.util.List;

/** A day to come above the amount at which nothing is printed. */
final class DailyCeilingRule extends Rule {
    DailyCeilingRule() {
        super("DAILY-CEILING", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<DailyTotal> above = DailyTotal.all(plan).stream()
                .filter(day -> !day.isOver())
                .filter(day -> day.isAbove(Medicine.DailyLimit::stopAbove))
                .toList();
        return DailyTotal.firstOfEachPlace(above).stream()
                .map(day -> stop(
                        day.place(),
                        day.total() + " on " + Phrases.day(day.date()) + " is more than the "
                                + day.medicine().daily().orElseThrow().stopAbove() + " a day that are ever printed",
                        "read the order again and ask the prescriber"))
                .toList();
    }
}

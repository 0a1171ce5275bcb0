package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.util.List;

/** A container that expires before the last evening it may be used. Its date is the last day of use. */
final class StockExpiresRule extends Rule {
    StockExpiresRule() {
        super("STOCK-EXPIRES", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return UseSpan.all(plan).stream()
                .filter(span -> span.container()
                        .expires()
                        .filter(day -> day.isBefore(span.lastUse()))
                        .isPresent())
                .map(span -> stop(
                        span.place(plan, "expires"),
                        "this " + span.medicine() + " expires on "
                                + Phrases.day(span.container().expires().orElseThrow())
                                + " and may still be wanted on " + Phrases.day(span.lastUse()),
                        "read the box again; replace it, or load it earlier if the pharmacist agrees"))
                .distinct()
                .toList();
    }
}

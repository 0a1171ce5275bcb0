package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.util.List;

/** A container in use or to be used whose expiry date nobody wrote down. */
final class StockExpiryUnknownRule extends Rule {
    StockExpiryUnknownRule() {
        super("STOCK-EXPIRY-UNKNOWN", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return UseSpan.all(plan).stream()
                .filter(span -> span.container().expires().isEmpty())
                .map(span -> warn(
                        plan.inPlan("/on-hand/" + span.medicine() + "/" + span.stock()),
                        "nobody wrote when this " + span.medicine() + " expires",
                        "read expires from the box"))
                .distinct()
                .toList();
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.util.List;

/** Something was used from a container and nobody wrote when it was opened, so its in-use days cannot be counted. */
final class StockOpenedUnknownRule extends Rule {
    StockOpenedUnknownRule() {
        super("STOCK-OPENED-UNKNOWN", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return OpenedStock.all(plan).stream()
                .filter(opened -> opened.stock().opened().isEmpty())
                .map(opened -> stop(
                        plan.inPlan("/on-hand/" + opened.medicine().id() + "/" + opened.index()),
                        "this " + opened.medicine().id() + " was used, and nobody wrote when it was opened",
                        "write opened, or have it thrown away and take the line out"))
                .toList();
    }
}

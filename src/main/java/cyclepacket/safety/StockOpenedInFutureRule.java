package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.util.List;

/** A container cannot have been opened after the day the packet was prepared. */
final class StockOpenedInFutureRule extends Rule {
    StockOpenedInFutureRule() {
        super("STOCK-OPENED-IN-FUTURE", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return OpenedStock.all(plan).stream()
                .filter(opened -> opened.stock()
                        .opened()
                        .filter(plan.preparedOn()::isBefore)
                        .isPresent())
                .map(opened -> stop(
                        opened.place(plan, "opened"),
                        "this " + opened.medicine().id() + " was opened on "
                                + Phrases.day(opened.stock().opened().orElseThrow())
                                + ", after the day the packet was prepared",
                        "mend the date; a container opened in this course is in the record, not here"))
                .toList();
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.quantity.Dose;
import java.util.List;
import java.util.Optional;

/** More was used from a container than it can have held. */
final class StockUsedUpRule extends Rule {
    StockUsedUpRule() {
        super("STOCK-USED-UP", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return OpenedStock.all(plan).stream()
                .filter(StockUsedUpRule::isUsedUp)
                .map(opened -> stop(
                        opened.place(plan, "used"),
                        opened.stock().used().orElseThrow() + " used is " + comparison(opened) + " a "
                                + opened.medicine().id() + " of "
                                + opened.stock().size() + " can hold",
                        "take the line out, or mend used"))
                .toList();
    }

    private static String comparison(OpenedStock opened) {
        return mostOf(opened)
                        .filter(most -> opened.stock().used().orElseThrow().isMoreThan(most))
                        .isPresent()
                ? "more than"
                : "all that";
    }

    private static Optional<Dose> mostOf(OpenedStock opened) {
        return opened.medicine()
                .sizeLabelled(opened.stock().size())
                .map(size -> size.gives().most());
    }

    private static boolean isUsedUp(OpenedStock opened) {
        Optional<Dose> most = mostOf(opened);
        return most.isPresent()
                && opened.stock()
                        .used()
                        .filter(used -> !used.isLessThan(most.get()))
                        .isPresent();
    }
}

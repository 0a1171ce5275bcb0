package cyclepacket.supply;

import cyclepacket.ledger.Container;
import cyclepacket.ledger.ContainerLine;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.supply.LoadingOrder.Gain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Compares the plan's own loading order with the best one of what is not loaded yet. */
final class BetterOrder {
    private BetterOrder() {}

    /**
     * @param drawn everything drawn so far, in thousandths
     * @param partUsedFirst whether containers in use before the plan go first
     */
    static Optional<LoadingOrder> of(MedicineLedger ledger, EveningTotals totals, long drawn, boolean partUsedFirst) {
        int loaded = loaded(ledger.containers(), drawn);
        List<Container> waiting = ledger.containers().stream()
                .skip(loaded)
                .map(ContainerLine::container)
                .toList();
        long from = loaded == 0
                ? 0
                : ledger.containers().get(loaded - 1).leastTotal().milliUnits();
        if (ledger.medicine().device().pen().isEmpty() || waiting.size() < 2 || from >= totals.goal()) {
            return Optional.empty();
        }
        int evening = loaded == 0 ? EveningTotals.NONE : totals.evening(from);
        LoadingSearch search = new LoadingSearch(totals, from, evening, partUsedFirst);
        LoadingSearch.Row own = search.inOrder(waiting);
        boolean leavesPartUsed = partUsedFirst && leavesPartUsed(waiting);
        return search.best(waiting)
                .filter(best -> leavesPartUsed || best.isBetterThan(own))
                .map(best -> advice(best, own, waiting, leavesPartUsed));
    }

    /** Whether a container that is in use comes after one that is not. */
    private static boolean leavesPartUsed(List<Container> waiting) {
        return waiting.stream()
                .dropWhile(container -> container.opened().isPresent())
                .anyMatch(container -> container.opened().isPresent());
    }

    /** How many containers were in the pen so far, the one in it now counted: it stays there. */
    private static int loaded(List<ContainerLine> lines, long drawn) {
        int loaded = 0;
        while (loaded < lines.size()
                && (loaded == 0 ? 0 : lines.get(loaded - 1).leastTotal().milliUnits()) < drawn) {
            loaded++;
        }
        return loaded;
    }

    private static LoadingOrder advice(
            LoadingSearch.Row best, LoadingSearch.Row own, List<Container> waiting, boolean leavesPartUsed) {
        List<Container> order = new ArrayList<>(best.order());
        waiting.stream().filter(container -> !order.contains(container)).forEach(order::add);
        int fewer = own.evenings() - best.evenings();
        long less = own.left() - best.left();
        if (leavesPartUsed) {
            return new LoadingOrder(order, Gain.PART_USED_FIRST, 0, 0);
        }
        if (fewer > 0) {
            return new LoadingOrder(order, Gain.FEWER_EVENINGS, fewer, 0);
        }
        return less > 0
                ? new LoadingOrder(order, Gain.LESS_LEFT, 0, less)
                : new LoadingOrder(order, Gain.SOONER_EXPIRY, 0, 0);
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.Container;
import cyclepacket.quantity.Dose;
import cyclepacket.supply.LoadingOrder;
import cyclepacket.supply.SupplyLine;
import java.util.List;
import java.util.stream.Collectors;

/** Another order of what is at home saves something; the plan's own order is kept until somebody changes it. */
final class LoadingOrderRule extends Rule {
    LoadingOrderRule() {
        super("LOADING-ORDER", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return plan.supply().lines().stream()
                .flatMap(line -> line.betterOrder().map(better -> finding(plan, line, better)).stream())
                .toList();
    }

    private Finding finding(ComputedPlan plan, SupplyLine line, LoadingOrder better) {
        String order = better.order().stream().map(LoadingOrderRule::words).collect(Collectors.joining(", then "));
        return note(
                plan.inPlan("/on-hand/" + line.medicine().id()),
                "loading " + line.medicine().id() + " in another order " + saves(line, better)
                        + ", counted with the least content: " + order,
                "if you change the order, number the boxes again and print a new issue");
    }

    private static String saves(SupplyLine line, LoadingOrder better) {
        return switch (better.gain()) {
            case PART_USED_FIRST -> "uses first what is in use already";
            case FEWER_EVENINGS -> "saves " + Phrases.count(better.fewerEvenings(), "new-cartridge evening");
            case LESS_LEFT ->
                "leaves " + new Dose(better.lessLeft(), line.medicine().unit()) + " less in opened cartridges";
            case SOONER_EXPIRY -> "uses first what expires first";
        };
    }

    private static String words(Container container) {
        return container.label()
                + container.lot().map(lot -> " (lot " + lot + ")").orElse("");
    }
}

package cyclepacket.supply;

import cyclepacket.ledger.CycleLedger;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.HouseRules.SwabSkin;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.SupplyRules;
import cyclepacket.plan.SupplyRules.SharpsContainer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Counts everything on the table besides medicine; nothing that the plan does not use. */
final class SupplyItems {
    /** One for the skin and one for the rubber or a second wipe; common practice, no published source. */
    static final int SWABS_AN_INJECTION = 2;

    private static final String ALCOHOL = "alcohol";

    private final PlanFiles files;
    private final SupplyRules rules;
    private final int needles;
    private final int injections;
    private final int syringes;
    private final VialItems vials;

    SupplyItems(PlanFiles files, CycleLedger ledger, List<SupplyLine> lines) {
        this.files = files;
        rules = files.clinic().supplies();
        needles = lines.stream().mapToInt(SupplyLine::needles).sum();
        int pens = (int) lines.stream().filter(line -> line.needles() > 0).count();
        syringes = ledger.medicines().stream()
                .filter(medicine -> medicine.medicine().device().pen().isEmpty()
                        && medicine.medicine().isInjected())
                .mapToInt(medicine -> toCome(medicine, lines))
                .sum();
        vials = new VialItems(files.clinic().rules().spareNeedles());
        for (SupplyLine line : lines) {
            ledger.of(line.medicine()).ifPresent(medicine -> vials.add(medicine, line.undated()));
        }
        injections = needles - pens * files.clinic().rules().spareNeedles() + syringes;
    }

    private static int toCome(MedicineLedger ledger, List<SupplyLine> lines) {
        int dated =
                (int) ledger.draws().stream().filter(draw -> !draw.isRecorded()).count();
        return lines.stream()
                .filter(line -> line.medicine().equals(ledger.medicine()))
                .mapToInt(line -> dated + line.undated())
                .sum();
    }

    List<SupplyItem> all() {
        if (injections == 0) {
            return List.of();
        }
        List<SupplyItem> items = new ArrayList<>();
        add(items, SupplyItem.Kind.PEN_NEEDLE, needles);
        items.addAll(vials.all(rules.boxes()));
        if (usesAlcohol()) {
            add(items, SupplyItem.Kind.ALCOHOL_SWAB, SWABS_AN_INJECTION * injections + vials.extraSwabs());
        } else {
            add(items, SupplyItem.Kind.SOAP, 1);
        }
        add(items, SupplyItem.Kind.GAUZE_PAD, rules.gauzeAnInjection() * injections);
        items.add(sharps());
        return List.copyOf(items);
    }

    private boolean usesAlcohol() {
        return files.clinic().rules().swabSkin() == SwabSkin.ALCOHOL
                && !files.plan().avoid().contains(ALCOHOL);
    }

    private void add(List<SupplyItem> items, SupplyItem.Kind kind, int count) {
        if (count > 0) {
            items.add(new SupplyItem(
                    kind, count, Optional.ofNullable(rules.boxes().get(kind.key())), Optional.empty()));
        }
    }

    /** The smallest that holds every used needle and syringe, or as many of the largest as it takes. */
    private SupplyItem sharps() {
        SupplyItem.Kind kind = SupplyItem.Kind.SHARPS_CONTAINER;
        List<SharpsContainer> sold = rules.sharps();
        if (sold.isEmpty()) {
            return new SupplyItem(kind, 1, Optional.empty(), Optional.empty());
        }
        int used = needles
                + syringes
                + vials.all(rules.boxes()).stream()
                        .filter(item -> item.kind() != SupplyItem.Kind.EMPTY_SYRINGE)
                        .mapToInt(SupplyItem::count)
                        .sum();
        SharpsContainer largest = sold.get(sold.size() - 1);
        SharpsContainer fitting =
                sold.stream().filter(one -> one.holds() >= used).findFirst().orElse(largest);
        int count = (used + fitting.holds() - 1) / fitting.holds();
        return new SupplyItem(kind, count, Optional.empty(), Optional.of(fitting.size()));
    }
}

package cyclepacket.page;

import cyclepacket.ledger.Draw;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Medicine;
import cyclepacket.quantity.Dose;
import cyclepacket.supply.SupplyLine;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the list of what is at home and when to call the pharmacy. */
final class SupplyViews {
    private static final int SWABS_AN_INJECTION = 2;

    private final PacketFacts facts;
    private final Words words;

    SupplyViews(PacketFacts facts, Words words) {
        this.facts = facts;
        this.words = words;
    }

    SupplyView view() {
        return new SupplyView(facts.supply().lines().stream().map(this::item).toList(), other());
    }

    private SupplyView.Item item(SupplyLine line) {
        MedicineLedger ledger = facts.ledger().of(line.medicine()).orElseThrow();
        boolean pen = line.medicine().device().pen().isPresent();
        return new SupplyView.Item(
                line.medicine().name(),
                pen ? cartridges(ledger) : pieces(ledger),
                !line.isShort(),
                line.covered().surelyUntil().map(words.clock()::day),
                Optional.of(line).filter(SupplyLine::isShort).map(this::callBy));
    }

    private List<String> cartridges(MedicineLedger ledger) {
        return ledger.containers().stream()
                .filter(line -> !line.hasEnded())
                .map(line -> words.fill(
                        "supply.box",
                        Map.of(
                                "number", Integer.toString(line.container().number()),
                                "size", words.amounts().amount(line.container().label()))))
                .toList();
    }

    /** Whole containers that are not used up: one for each dose, or as many as the record has emptied. */
    private List<String> pieces(MedicineLedger ledger) {
        Medicine medicine = ledger.medicine();
        boolean isVial = medicine.device().stockVial().isPresent();
        Dose used = ledger.draws().stream()
                .filter(Draw::isRecorded)
                .map(Draw::after)
                .reduce(Dose.zero(medicine.unit()), Dose::max);
        long left = ledger.containers().stream()
                .filter(line -> isVial
                        ? line.firstEnd()
                                .filter(day -> day.isBefore(facts.today()))
                                .isEmpty()
                        : line.leastTotal().isMoreThan(used))
                .count();
        return List.of(
                words.fill("supply." + piece(medicine) + (left == 1 ? "" : "s"), Map.of("count", Long.toString(left))));
    }

    private static String piece(Medicine medicine) {
        if (medicine.device().taken().isPresent()) {
            return medicine.device().taken().get().piece().word();
        }
        return medicine.device().readySyringe().isPresent() ? "syringe" : "vial";
    }

    private SupplyView.CallBy callBy(SupplyLine line) {
        Optional<ZonedDateTime> by = line.lastOrder()
                .map(at -> at.withZoneSameInstant(facts.files().plan().patient().zone()));
        boolean late = by.map(at -> at.toLocalDate().isBefore(facts.today())).orElse(true);
        return new SupplyView.CallBy(
                by.map(at -> words.clock().day(at.toLocalDate())),
                by.map(at -> words.clock().time(at.toLocalTime())),
                late);
    }

    private List<SupplyView.Other> other() {
        int needles =
                facts.supply().lines().stream().mapToInt(SupplyLine::needles).sum();
        int spare = facts.files().clinic().rules().spareNeedles();
        long pens = facts.supply().lines().stream()
                .filter(line -> line.needles() > 0)
                .count();
        long syringes = facts.ledger().medicines().stream()
                .filter(ledger -> ledger.medicine().device().pen().isEmpty()
                        && ledger.medicine().isInjected())
                .flatMap(ledger -> ledger.draws().stream())
                .filter(draw -> !draw.isRecorded())
                .count();
        long injections = needles - pens * spare + syringes;
        List<SupplyView.Other> other = new ArrayList<>();
        if (needles > 0) {
            other.add(new SupplyView.Other("needles", Integer.toString(needles)));
        }
        if (MedicineViews.usesAlcohol(facts) && injections > 0) {
            other.add(new SupplyView.Other("swabs", Long.toString(SWABS_AN_INJECTION * injections)));
        }
        other.add(new SupplyView.Other("sharps", "1"));
        return other;
    }
}

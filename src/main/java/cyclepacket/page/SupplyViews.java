package cyclepacket.page;

import cyclepacket.ledger.Draw;
import cyclepacket.ledger.Evening;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Medicine;
import cyclepacket.quantity.Dose;
import cyclepacket.supply.Basket;
import cyclepacket.supply.SupplyItem;
import cyclepacket.supply.SupplyLine;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the list of what is at home and when to call the pharmacy. */
final class SupplyViews {
    private final PacketFacts facts;
    private final Words words;

    SupplyViews(PacketFacts facts, Words words) {
        this.facts = facts;
        this.words = words;
    }

    SupplyView view() {
        List<SupplyView.Item> items =
                facts.supply().lines().stream().map(this::item).toList();
        return new SupplyView(
                items,
                orders(),
                laterOrders(),
                other(),
                items.stream().anyMatch(item -> item.kind().equals("stays")),
                facts.supply().longestUntil().map(words.clock()::day));
    }

    private SupplyView.Item item(SupplyLine line) {
        MedicineLedger ledger = facts.ledger().of(line.medicine()).orElseThrow();
        boolean pen = line.medicine().device().pen().isPresent();
        return new SupplyView.Item(
                facts.nameOf(line.medicine()),
                kind(line, ledger),
                pen ? cartridges(ledger) : pieces(ledger),
                !line.isShort(),
                line.covered().surelyUntil().map(words.clock()::day),
                Optional.of(line)
                        .filter(SupplyLine::isToBuy)
                        .map(SupplyLine::lastOrder)
                        .map(this::callBy));
    }

    /** An amount that a call may still change is never the ground of a promise; the number of ready pieces does not change. */
    private String kind(SupplyLine line, MedicineLedger ledger) {
        if (facts.isExact(line.medicine())) {
            return "exact";
        }
        if (ledger.days().isEmpty() && line.needed().isZero()) {
            return "waits";
        }
        if (!line.isShort() && facts.goesOn(line.medicine().id())) {
            return "goes-on";
        }
        boolean isDialled = line.medicine().device().readySyringe().isEmpty()
                && line.medicine().device().taken().isEmpty();
        boolean waits = facts.supply().longestUntil().isPresent()
                || ledger.days().stream().anyMatch(day -> day.evening().state() == Evening.State.PROVISIONAL);
        boolean isBeforeTheCall = line.covered()
                .surelyUntil()
                .filter(day -> line.isShort())
                .flatMap(day -> facts.course().provisionalFrom().filter(day::isBefore))
                .isPresent();
        return isDialled && waits && !isBeforeTheCall ? "stays" : "sure";
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
        return List.of(counted(medicine, left));
    }

    private String counted(Medicine medicine, long number) {
        Map<String, String> count = Map.of("count", Long.toString(number));
        return number == 1
                ? words.fill("supply." + piece(medicine), count)
                : words.count("supply." + piece(medicine) + "s", number, count);
    }

    private static String piece(Medicine medicine) {
        if (medicine.device().taken().isPresent()) {
            return medicine.device().taken().get().piece().word();
        }
        return medicine.device().readySyringe().isPresent() ? "syringe" : "vial";
    }

    private SupplyView.CallBy callBy(Optional<ZonedDateTime> lastOrder) {
        Optional<ZonedDateTime> by = lastOrder.map(
                at -> at.withZoneSameInstant(facts.files().plan().patient().zone()));
        boolean late =
                lastOrder.map(at -> at.toLocalDate().isBefore(facts.today())).orElse(true);
        return new SupplyView.CallBy(
                by.map(at -> words.clock().day(at.toLocalDate())),
                by.map(at -> words.clock().time(at.toLocalTime())),
                late);
    }

    private List<SupplyView.Order> orders() {
        List<SupplyView.Order> orders = new ArrayList<>();
        for (SupplyLine line : facts.supply().lines()) {
            line.toOrderNow().ifPresent(basket -> add(orders, line, basket, line.lastOrder()));
        }
        return orders;
    }

    private List<SupplyView.Order> laterOrders() {
        List<SupplyView.Order> orders = new ArrayList<>();
        for (SupplyLine line : facts.supply().lines()) {
            line.toOrderLater().forEach(stage -> add(orders, line, stage.basket(), stage.lastOrder()));
        }
        return orders;
    }

    private void add(List<SupplyView.Order> orders, SupplyLine line, Basket basket, Optional<ZonedDateTime> lastOrder) {
        for (Basket.Line size : basket.lines()) {
            orders.add(new SupplyView.Order(what(line.medicine(), size), callBy(lastOrder)));
        }
    }

    private String what(Medicine medicine, Basket.Line size) {
        String name = facts.nameOf(medicine);
        String holds = words.amounts().amount(size.size().label());
        boolean isPen = medicine.device().pen().isPresent();
        if (!isPen && medicine.device().readySyringe().isEmpty()) {
            return words.fill(
                    "supply.order.piece",
                    Map.of("medicine", name, "what", counted(medicine, size.count()), "size", holds));
        }
        return words.count(
                isPen ? "supply.order.cartridge" : "supply.order.syringe",
                size.count(),
                Map.of("medicine", name, "count", Integer.toString(size.count()), "size", holds));
    }

    private List<String> other() {
        return facts.supply().items().stream().map(this::sentence).toList();
    }

    private String sentence(SupplyItem item) {
        String have = words.count(
                "supply.other." + item.kind().key(),
                item.count(),
                Map.of("count", Integer.toString(item.count()), "size", size(item)));
        if (item.boxes().isPresent()) {
            int boxes = item.boxes().get();
            return have + " "
                    + words.fill(
                            boxes == 1 ? "supply.other.box" : "supply.other.boxes",
                            Map.of(
                                    "boxes", Integer.toString(boxes),
                                    "holds", Integer.toString(item.boxOf().orElseThrow())));
        }
        return item.size()
                .filter(size -> item.kind() == SupplyItem.Kind.SHARPS_CONTAINER)
                .map(size -> have + " " + words.fill("supply.other.size", Map.of("size", words.slot(size))))
                .orElse(have);
    }

    /** The size of a needle, or what a syringe is called; nothing for what has one size. */
    private String size(SupplyItem item) {
        return item.needle()
                .map(needle -> MedicineViews.needle(needle, words))
                .or(() -> item.size().map(words::slot))
                .orElse("");
    }
}

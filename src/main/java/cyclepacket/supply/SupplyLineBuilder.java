package cyclepacket.supply;

import cyclepacket.ledger.Covered;
import cyclepacket.ledger.Draw;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.HouseRules;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol.StimulationDays;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Works out one medicine's line. */
final class SupplyLineBuilder {
    private final PlanFiles files;
    private final HouseRules rules;
    private final MedicineLedger ledger;
    private final Medicine medicine;
    private final PharmacyDays days;
    private final TreeMap<Integer, List<Draw>> byLength = new TreeMap<>();
    private final TreeMap<Integer, EveningTotals> totalsByLength = new TreeMap<>();
    private final List<Draw> draws;
    private final int undated;
    private final EveningTotals totals;
    private final long leastTotal;
    private final long drawn;
    private final Shop shop;

    SupplyLineBuilder(PlanFiles files, MedicineLedger ledger, PharmacyDays days, List<CourseOfLength> lengths) {
        this.files = files;
        rules = files.clinic().rules();
        this.ledger = ledger;
        this.days = days;
        medicine = ledger.medicine();
        for (CourseOfLength length : lengths) {
            List<Draw> own = length.draws(medicine);
            byLength.put(length.days(), own);
            totalsByLength.put(length.days(), new EveningTotals(medicine, rules.inUseDayOne(), own));
        }
        boolean hasDates = ledger.draws().stream().anyMatch(draw -> !draw.isRecorded());
        draws = hasDates || byLength.isEmpty()
                ? ledger.draws()
                : byLength.firstEntry().getValue();
        List<Draw> toCome = draws.stream().filter(draw -> !draw.isRecorded()).toList();
        undated = hasDates ? 0 : toCome.size();
        totals = new EveningTotals(medicine, rules.inUseDayOne(), draws);
        leastTotal = ledger.containers().isEmpty()
                ? 0
                : ledger.containers()
                        .get(ledger.containers().size() - 1)
                        .leastTotal()
                        .milliUnits();
        drawn = totals.goal() - sum(toCome);
        shop = new Shop(medicine, toCome);
    }

    private static long sum(List<Draw> draws) {
        return draws.stream()
                .filter(draw -> !draw.isRecorded())
                .mapToLong(draw -> draw.after().milliUnits() - draw.before().milliUnits())
                .sum();
    }

    private Dose dose(long milliUnits) {
        return new Dose(Math.max(0, milliUnits), medicine.unit());
    }

    /** The total that is reached for certain; what was drawn was there, whatever the labels say. */
    private long start() {
        return Math.max(leastTotal, drawn);
    }

    SupplyLine build() {
        Optional<LocalDate> firstShort = ledger.covered().firstShort().or(this::undatedShort);
        Purchase purchase = purchase();
        return new SupplyLine(
                medicine,
                dose(totals.goal() - drawn),
                undated,
                dose(leastTotal - drawn),
                ledger.covered(),
                dose(totals.goal() - leastTotal),
                firstShort,
                firstShort.flatMap(this::lastOrder),
                needles(purchase),
                purchase,
                lengths(),
                choices(),
                BetterOrder.of(ledger, totals, drawn, rules.chainPartUsed()));
    }

    private Optional<LocalDate> undatedShort() {
        return undated > 0 && totals.goal() > start() ? Optional.of(totals.firstShort(start())) : Optional.empty();
    }

    private Optional<ZonedDateTime> lastOrder(LocalDate day) {
        return days.lastOrder(day, injectionTime(day));
    }

    /** The earlier of the patient's and the clinic's clock: a parcel of the same day must come before both. */
    private LocalTime injectionTime(LocalDate day) {
        return ledger.day(day)
                .map(LedgerDay::evening)
                .flatMap(evening -> evening.at())
                .flatMap(at -> Stream.of(at, at.withZoneSameInstant(days.zone()))
                        .map(ZonedDateTime::toLocalTime)
                        .min(LocalTime::compareTo))
                .orElse(LocalTime.MIN);
    }

    private Purchase purchase() {
        if (totals.goal() <= start()) {
            return new Purchase(
                    Optional.of(Basket.empty(medicine.unit())), Optional.empty(), shop.isPriced(), List.of());
        }
        if (isOfSeveralSizes()) {
            Basket each = shop.ofEach(missingSyringes());
            return new Purchase(
                    Optional.of(each).filter(basket -> !basket.isEmpty()),
                    Optional.empty(),
                    each.cost().isPresent(),
                    shop.doubts());
        }
        Optional<Basket> chosen = shop.best(BasketSearch.Goal.CHEAPEST, totals, start(), totals.goal());
        Optional<Basket> calmest = shop.best(BasketSearch.Goal.FEWEST_EVENINGS, totals, start(), totals.goal())
                .filter(basket -> basket.changeEvenings()
                        < chosen.map(Basket::changeEvenings).orElse(0));
        List<SupplyDoubt> doubts = new ArrayList<>(shop.doubts());
        if (chosen.isEmpty()) {
            doubts.add(shop.reason(dose(totals.goal() - start())));
        }
        return new Purchase(chosen, calmest, shop.isPriced(), doubts);
    }

    private boolean isOfSeveralSizes() {
        return Shop.takesSeveralSizes(
                medicine, draws.stream().filter(draw -> !draw.isRecorded()).toList());
    }

    /** The doses to come for which no syringe of that size is at home any more. */
    private List<Dose> missingSyringes() {
        List<Dose> home = new ArrayList<>(ledger.containers().stream()
                .map(line -> line.container().label())
                .toList());
        List<Dose> missing = new ArrayList<>();
        for (Draw draw : draws) {
            boolean isAtHome = draw.dialled().isZero() || home.remove(draw.dialled());
            if (!isAtHome && !draw.isRecorded()) {
                missing.add(draw.dialled());
            }
        }
        return missing;
    }

    /** One dose on a day that is not called yet is the same at every length. */
    private List<LengthCover> lengths() {
        if (undated > 0) {
            return List.of();
        }
        StimulationDays usual = files.protocol().stimulationDays();
        return Stream.of(usual.least(), usual.usual(), usual.most())
                .distinct()
                .filter(byLength::containsKey)
                .map(this::cover)
                .toList();
    }

    private LengthCover cover(int length) {
        EveningTotals own = totalsByLength.get(length);
        long most = ledger.containers().isEmpty()
                ? 0
                : ledger.containers()
                        .get(ledger.containers().size() - 1)
                        .mostTotal()
                        .milliUnits();
        Covered covered = new Covered(
                Optional.ofNullable(own.lastCovered(leastTotal)),
                Optional.ofNullable(own.lastCovered(most)),
                Optional.of(leastTotal).filter(total -> total < own.goal()).map(own::firstShort),
                dose(own.goal() - leastTotal));
        return new LengthCover(length, dose(sum(byLength.get(length))), covered);
    }

    private Optional<BuyChoices> choices() {
        Optional<LocalDate> startOn =
                Optional.ofNullable(files.plan().anchors().get(Anchor.S1)).map(Plan.Moment::date);
        if (byLength.isEmpty() || startOn.isEmpty() || isOfSeveralSizes()) {
            return Optional.empty();
        }
        LengthOdds odds = LengthOdds.of(files.clinic(), files.protocol(), List.copyOf(byLength.keySet()));
        ChoiceMaker.Calendar calendar =
                new ChoiceMaker.Calendar(startOn.get(), files.plan().prepared().on(), this::lastOrder);
        return new ChoiceMaker(shop, medicine.unit(), odds, totalsByLength, start(), calendar).choices();
    }

    /** Counted with the least content, which needs the most cartridges. */
    private int needles(Purchase purchase) {
        long injections = draws.stream().filter(draw -> !draw.isRecorded()).count();
        if (medicine.device().pen().isEmpty() || injections == 0) {
            return 0;
        }
        long ends = ledger.containers().stream()
                .filter(line -> !line.hasEnded() && line.leastTotal().milliUnits() < totals.goal())
                .count();
        int bought = purchase.chosen().map(Basket::count).orElse(0);
        // The last one bought need not come to its end; the first is loaded when what is at home has.
        return Math.toIntExact(injections + ends + Math.max(0, bought - 1) + rules.spareNeedles());
    }
}

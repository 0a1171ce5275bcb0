package cyclepacket.supply;

import cyclepacket.ledger.Draw;
import cyclepacket.plan.Device.Window;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.StockVial;
import cyclepacket.quantity.Dose;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The sizes of one medicine that can be bought for the doses to come, and the best sets of them. */
final class Shop {
    private final Medicine medicine;
    private final Dose largest;
    private final List<Medicine.Size> sizes = new ArrayList<>();
    private final List<BasketSearch.Offer> offers = new ArrayList<>();
    private final List<SupplyDoubt> doubts = new ArrayList<>();
    private final boolean isPriced;

    /** @param toCome the doses to come; a ready syringe is used whole, so only a size that is a dose helps */
    Shop(Medicine medicine, List<Draw> toCome) {
        this.medicine = medicine;
        largest = toCome.stream()
                .map(draw -> draw.after().minus(draw.before()))
                .reduce(Dose.zero(medicine.unit()), Dose::max);
        List<Medicine.Size> fitting = medicine.sizes().stream()
                .filter(size -> medicine.device().readySyringe().isEmpty()
                        || toCome.stream().anyMatch(draw -> draw.dialled().equals(size.label())))
                .toList();
        isPriced = fitting.stream().allMatch(size -> size.price().isPresent());
        if (!isPriced && fitting.stream().anyMatch(size -> size.price().isPresent())) {
            fitting.stream()
                    .filter(size -> size.price().isEmpty())
                    .map(size -> new SupplyDoubt(
                            SupplyDoubt.Kind.PRICE_MISSING, size.label().toString()))
                    .forEach(doubts::add);
        }
        for (Medicine.Size size : fitting) {
            Dose content = usable(size);
            if (!content.isZero()) {
                sizes.add(size);
                long cost = isPriced
                        ? size.price().orElseThrow().hundredths()
                        : size.label().milliUnits();
                offers.add(new BasketSearch.Offer(content.milliUnits(), cost));
            }
        }
    }

    /** A pen that shows what is left gives whole marks, a vial of several doses whole doses; the smaller rest is lost. */
    private Dose usable(Medicine.Size size) {
        Dose least = size.gives().least();
        Optional<StockVial> vial = medicine.device().stockVial();
        if (vial.isPresent()) {
            return wholeDoses(vial.get(), least);
        }
        return medicine.device()
                .pen()
                .filter(pen -> pen.window() == Window.LEFT)
                .map(pen -> least.toMultipleOf(pen.dial().step(), RoundingMode.FLOOR))
                .orElse(least);
    }

    /** As often as the largest dose to come surely comes out, with what hub and needle lose each time. */
    private Dose wholeDoses(StockVial vial, Dose content) {
        return largest.isZero()
                ? content
                : new Dose(largest.milliUnits() * (vial.holds(content) / vial.takes(largest)), medicine.unit());
    }

    /** Whether every size that can be bought has a price; else the least labelled units stand for the cost. */
    boolean isPriced() {
        return isPriced && !sizes.isEmpty();
    }

    List<SupplyDoubt> doubts() {
        return List.copyOf(doubts);
    }

    /** Whether one dose takes another size than the next: then a sum of amounts says nothing. */
    static boolean takesSeveralSizes(Medicine medicine, List<Draw> toCome) {
        return medicine.device().readySyringe().isPresent()
                && toCome.stream().map(Draw::dialled).distinct().count() > 1;
    }

    Optional<Basket> best(BasketSearch.Goal goal, EveningTotals totals, long start, long end) {
        return new BasketSearch(offers, goal)
                .find(totals, start, start > 0, end)
                .map(row -> new Basket(
                        medicine.unit(), row.offers().stream().map(sizes::get).toList(), row.evenings()));
    }

    /** One syringe for each dose that is not at hand. */
    Basket ofEach(List<Dose> doses) {
        List<Medicine.Size> all = new ArrayList<>();
        for (Dose dose : doses) {
            medicine.sizeLabelled(dose)
                    .ifPresentOrElse(
                            all::add, () -> doubts.add(new SupplyDoubt(SupplyDoubt.Kind.NO_SIZE, dose.toString())));
        }
        return new Basket(medicine.unit(), all, 0);
    }

    /** Why {@link #best} found nothing. */
    SupplyDoubt reason(Dose amount) {
        return new SupplyDoubt(
                offers.isEmpty() ? SupplyDoubt.Kind.NO_SIZE : SupplyDoubt.Kind.TOO_MANY, amount.toString());
    }

    /** How far the containers of the basket reach in their order, in-use days counted. */
    long reach(EveningTotals totals, long start, Basket basket) {
        long total = start;
        for (Medicine.Size size : basket.loaded()) {
            if (total < totals.goal()) {
                total = totals.reach(total, usable(size).milliUnits());
            }
        }
        return total;
    }

    /** What the basket gives in sum with the least content, in thousandths. */
    long content(Basket basket) {
        return basket.loaded().stream()
                .mapToLong(size -> usable(size).milliUnits())
                .sum();
    }
}

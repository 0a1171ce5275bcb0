package cyclepacket.supply;

import cyclepacket.ledger.Covered;
import cyclepacket.plan.Medicine;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How one medicine lasts and what to buy of it.
 *
 * @param needed still to be given, doses whose day is not called yet included
 * @param undated how many of the doses to come have no day yet
 * @param onHandLeast what is left at home for certain
 * @param covered how far that reaches by the plan's days; by the longest course's while the trigger is not called
 * @param shortAtMost what is missing for certain cover of everything needed
 * @param firstShort the first evening that may be short; for a dose without a day the earliest it can have
 * @param lastOrder the last hour at which an order still comes in time, clinic time; empty when nothing runs short, or
 *     when no order can come in time
 * @param needles pen needles for the rest of the course: one an injection, one for each new cartridge that may be needed,
 *     and the clinic's spares; 0 for medicines without them
 * @param purchase what to buy for the shortage
 * @param lengths how it lasts by the protocol's least, usual and most days, those still possible; empty when the trigger
 *     was called, or the medicine has no day before it
 * @param choices the ways to buy while the length is unknown
 * @param betterOrder a better order to load what is at home, if there is one
 */
public record SupplyLine(
        Medicine medicine,
        Dose needed,
        int undated,
        Dose onHandLeast,
        Covered covered,
        Dose shortAtMost,
        Optional<LocalDate> firstShort,
        Optional<ZonedDateTime> lastOrder,
        int needles,
        Purchase purchase,
        List<LengthCover> lengths,
        Optional<BuyChoices> choices,
        Optional<LoadingOrder> betterOrder) {
    public SupplyLine {
        Objects.requireNonNull(medicine, "medicine");
        Objects.requireNonNull(needed, "needed");
        Objects.requireNonNull(onHandLeast, "onHandLeast");
        Objects.requireNonNull(covered, "covered");
        Objects.requireNonNull(shortAtMost, "shortAtMost");
        Objects.requireNonNull(firstShort, "firstShort");
        Objects.requireNonNull(lastOrder, "lastOrder");
        Objects.requireNonNull(purchase, "purchase");
        lengths = List.copyOf(lengths);
        Objects.requireNonNull(choices, "choices");
        Objects.requireNonNull(betterOrder, "betterOrder");
    }

    /** Whether a dated evening may be short. */
    public boolean isShort() {
        return covered.firstShort().isPresent();
    }

    /** Whether anything has to be bought at all. */
    public boolean isToBuy() {
        return !shortAtMost.isZero();
    }

    /**
     * What to order at once: the first step of the way that costs least, or everything where the length is known or no
     * step can wait.
     */
    public Optional<Basket> toOrderNow() {
        return steps().map(BuyChoice::now).or(purchase::chosen).filter(basket -> !basket.isEmpty());
    }

    /** What to order later, only while stimulation still goes on. */
    public List<BuyChoice.Stage> toOrderLater() {
        return steps().map(BuyChoice::later).orElse(List.of());
    }

    private Optional<BuyChoice> steps() {
        return choices.flatMap(BuyChoices::best);
    }
}

package cyclepacket.supply;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One way to buy while nobody knows how long stimulation takes: this now, the rest later.
 *
 * @param now what is bought at once; may be nothing
 * @param forDays the length that {@code now} is the best set for
 * @param later one order after the other, each made when stimulation still goes on at its last hour
 * @param waste mean of what is left over with the least content, in thousandths, what is at home included
 * @param wasteCost mean price of what was bought and is left over, in hundredths; empty without prices
 * @param cost mean price of everything bought, in hundredths; empty without prices
 * @param isInTime whether every later order can still come in time
 */
public record BuyChoice(
        Basket now,
        int forDays,
        List<Stage> later,
        Ratio waste,
        Optional<Ratio> wasteCost,
        Optional<Ratio> cost,
        boolean isInTime) {
    public BuyChoice {
        Objects.requireNonNull(now, "now");
        later = List.copyOf(later);
        Objects.requireNonNull(waste, "waste");
        Objects.requireNonNull(wasteCost, "wasteCost");
        Objects.requireNonNull(cost, "cost");
    }

    /** The chance that anything is ordered later. */
    public Ratio refillChance() {
        return later.isEmpty() ? Ratio.ZERO : later.get(0).chanceOrdered();
    }

    /**
     * One later order.
     *
     * @param days stimulation evenings from which on it is needed
     * @param orderedFromDays stimulation evenings from which on it is ordered, because its last hour comes before the
     *     length is known; at most {@code days}
     * @param firstShort the first evening that is short without it
     * @param lastOrder the last hour at which it surely comes in time; empty when no order can
     * @param chanceNeeded how likely stimulation comes to its evening
     * @param chanceOrdered how likely stimulation still goes on at its last hour; not less
     */
    public record Stage(
            int days,
            int orderedFromDays,
            LocalDate firstShort,
            Optional<ZonedDateTime> lastOrder,
            Basket basket,
            Ratio chanceNeeded,
            Ratio chanceOrdered) {
        public Stage {
            Objects.requireNonNull(firstShort, "firstShort");
            Objects.requireNonNull(lastOrder, "lastOrder");
            Objects.requireNonNull(basket, "basket");
            Objects.requireNonNull(chanceNeeded, "chanceNeeded");
            Objects.requireNonNull(chanceOrdered, "chanceOrdered");
        }
    }
}

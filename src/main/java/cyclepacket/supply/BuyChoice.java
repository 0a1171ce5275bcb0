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
 * @param later one order after the other, each made only when stimulation comes to its evening
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

    /** The chance that anything has to be ordered later. */
    public Ratio refillChance() {
        return later.isEmpty() ? Ratio.ZERO : later.get(0).chance();
    }

    /**
     * One later order.
     *
     * @param days stimulation evenings from which on it is needed
     * @param firstShort the first evening that is short without it
     * @param lastOrder the last hour at which it surely comes in time; empty when no order can
     * @param chance how likely stimulation takes so many evenings
     * @param chanceBeforeKnown how likely its last hour comes while stimulation still goes on
     */
    public record Stage(
            int days,
            LocalDate firstShort,
            Optional<ZonedDateTime> lastOrder,
            Basket basket,
            Ratio chance,
            Ratio chanceBeforeKnown) {
        public Stage {
            Objects.requireNonNull(firstShort, "firstShort");
            Objects.requireNonNull(lastOrder, "lastOrder");
            Objects.requireNonNull(basket, "basket");
            Objects.requireNonNull(chance, "chance");
            Objects.requireNonNull(chanceBeforeKnown, "chanceBeforeKnown");
        }
    }
}

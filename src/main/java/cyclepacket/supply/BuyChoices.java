package cyclepacket.supply;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The ways to buy one medicine while the length is unknown, the largest first.
 *
 * @param best the one that is cheapest in expectation, or without prices wastes least; of those that come in time
 */
public record BuyChoices(LengthOdds odds, List<BuyChoice> all, Optional<BuyChoice> best) {
    public BuyChoices {
        Objects.requireNonNull(odds, "odds");
        all = List.copyOf(all);
        Objects.requireNonNull(best, "best");
    }
}

package cyclepacket.supply;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What covers the whole need of one medicine, the longest length counted.
 *
 * @param chosen the cheapest set, or the one with the least on its labels where prices are missing; empty when none covers
 *     the need
 * @param calmest the set with the fewest new-cartridge evenings; empty when the chosen one has as few
 * @param isPriced whether costs were compared
 */
public record Purchase(Optional<Basket> chosen, Optional<Basket> calmest, boolean isPriced, List<SupplyDoubt> doubts) {
    public Purchase {
        Objects.requireNonNull(chosen, "chosen");
        Objects.requireNonNull(calmest, "calmest");
        doubts = List.copyOf(doubts);
    }
}

package cyclepacket.supply;

import cyclepacket.ledger.Container;
import java.util.List;
import java.util.Objects;

/**
 * A loading order of what is at home that is better than the plan's own, counted with the least content.
 *
 * @param order every container that is not loaded yet, in the better order
 * @param fewerEvenings new-cartridge evenings it saves; negative never
 * @param lessLeft thousandths less that stay behind in opened cartridges; 0 when evenings are saved instead
 */
public record LoadingOrder(List<Container> order, int fewerEvenings, long lessLeft) {
    public LoadingOrder {
        Objects.requireNonNull(order, "order");
        order = List.copyOf(order);
    }
}

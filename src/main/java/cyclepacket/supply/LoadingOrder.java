package cyclepacket.supply;

import cyclepacket.ledger.Container;
import java.util.List;
import java.util.Objects;

/**
 * A loading order of what is at home that is better than the plan's own, counted with the least content.
 *
 * @param order every container that is not loaded yet, in the better order
 * @param gain what makes it better, the first that does
 * @param fewerEvenings new-cartridge evenings it saves; 0 for another gain
 * @param lessLeft thousandths less that stay behind in opened cartridges; 0 for another gain
 */
public record LoadingOrder(List<Container> order, Gain gain, int fewerEvenings, long lessLeft) {
    public LoadingOrder {
        Objects.requireNonNull(gain, "gain");
        order = List.copyOf(order);
    }

    /** What an order can gain, in the order in which it counts. */
    public enum Gain {
        /** A container that is in use already is not left to grow old. */
        PART_USED_FIRST,
        FEWER_EVENINGS,
        LESS_LEFT,
        SOONER_EXPIRY
    }
}

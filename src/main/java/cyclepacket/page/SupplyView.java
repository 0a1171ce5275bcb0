package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * What is at home, how long it lasts for sure, when to call the pharmacy, and what to order.
 *
 * @param orders what to order now, one row a size
 * @param laterOrders what to order only if no trigger call has come by then
 * @param other everything else that the rest of the course takes, each a sentence
 */
public record SupplyView(List<Item> items, List<Order> orders, List<Order> laterOrders, List<String> other) {
    public SupplyView {
        items = List.copyOf(items);
        orders = List.copyOf(orders);
        laterOrders = List.copyOf(laterOrders);
        other = List.copyOf(other);
    }

    /**
     * One medicine.
     *
     * @param atHome what is at home, for example {@code box 1 (600 units)}
     * @param lastsAll true when nothing runs short
     * @param surelyUntil the last day that is covered for sure; empty when not even the first is
     * @param callBy until when to call the pharmacy; empty when nothing runs short
     */
    public record Item(
            String medicine,
            List<String> atHome,
            boolean lastsAll,
            Optional<DayName> surelyUntil,
            Optional<CallBy> callBy) {
        public Item {
            atHome = List.copyOf(atHome);
        }
    }

    /** A day and an hour; {@code late} is true when it is past, or no order can come in time any more. */
    public record CallBy(Optional<DayName> day, Optional<String> time, boolean late) {}

    /**
     * One size to order.
     *
     * @param what the medicine, how many, and what one box or syringe holds
     */
    public record Order(String what, CallBy callBy) {}
}

package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * What is at home, how long it lasts for sure, when to call the pharmacy, and what to order.
 *
 * @param orders what to order now, one row a size
 * @param laterOrders what to order only if no trigger call has come by then
 * @param other everything else that the rest of the course takes, each a sentence
 * @param mayChange true when an amount that waits for a call was counted as it stands, so that no promise is for sure
 * @param longestUntil while the trigger is not called: the last evening of the longest course, to which all is counted
 */
public record SupplyView(
        List<Item> items,
        List<Order> orders,
        List<Order> laterOrders,
        List<String> other,
        boolean mayChange,
        Optional<DayName> longestUntil) {
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
     * @param kind {@code exact} for the parts of the trigger, {@code waits} while none of its days is known, {@code goes-on}
     *     when it goes on past the last day listed, {@code stays} when this counts on an amount that waits for a call, else
     *     {@code sure}
     * @param lastsAll true when nothing runs short
     * @param surelyUntil the last day that is covered for sure; empty when not even the first is
     * @param callBy until when to call the pharmacy; empty when nothing runs short
     */
    public record Item(
            String medicine,
            String kind,
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

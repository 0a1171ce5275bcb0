package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * What is at home, how long it lasts for sure, and when to call the pharmacy.
 *
 * @param other counts of needles, swabs and the like that the rest of the course takes
 */
public record SupplyView(List<Item> items, List<Other> other) {
    public SupplyView {
        items = List.copyOf(items);
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

    /** One kind of supply by the key of its word. */
    public record Other(String key, String count) {}
}

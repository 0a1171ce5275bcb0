package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * What is at home, how long it lasts for sure, and when to call the pharmacy.
 *
 * @param other counts of needles, swabs and the like that the course takes
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
     * @param surelyUntil the last day that is covered for sure; empty when not even the first is
     * @param callBy until when to call the pharmacy; empty when nothing runs short
     */
    public record Item(
            String medicine, List<String> atHome, Optional<DayName> surelyUntil, Optional<CallBy> callBy, boolean lastsAll) {
        public Item {
            atHome = List.copyOf(atHome);
        }
    }

    /** A day and an hour, and whether that hour is already past or the parcel comes too late. */
    public record CallBy(DayName day, String time, boolean late) {}

    /** One kind of supply by the key of its word. */
    public record Other(String key, String count) {}
}

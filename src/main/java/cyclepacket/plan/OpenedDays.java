package cyclepacket.plan;

import cyclepacket.quantity.Refusal;

/** The limit on the days that an opened container may be used. */
final class OpenedDays {
    private OpenedDays() {}

    /** @throws Refusal outside 1 to 400 */
    static void require(int days) {
        if (days < 1 || days > 400) {
            throw new Refusal("opened-days is from 1 to 400", "copy the number of days from the product's leaflet");
        }
    }
}

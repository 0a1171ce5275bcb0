package cyclepacket.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that the patient's packet prints, as texts that are ready to read.
 *
 * @param waiting the door names of what waits for a day that is told on the phone
 * @param ownLines a sentence of the clinic's own, by the page that has room for it
 * @param aim {@code transfer}, {@code insemination} or {@code freezing}
 * @param eggs {@code collected}, {@code grown} without being collected, or {@code none}
 * @param helper true when there is a page for the person who injects in place of the patient
 * @param travel the page for a journey, where it was asked for
 * @param wholePens true when every pen is thrown away whole
 */
public record PacketView(
        IssueView issue,
        PersonView person,
        PhonesView phones,
        LayoutView layout,
        StartView start,
        DoorView door,
        DaysView days,
        List<CartridgesView> cartridges,
        List<MedicineView> medicines,
        Optional<TriggerView> trigger,
        Optional<SitesView> sites,
        List<String> waiting,
        String aim,
        String eggs,
        boolean wholePens,
        SupplyView supply,
        TroubleView trouble,
        StorageView storage,
        LogView log,
        Optional<ChangedView> changed,
        Map<String, String> ownLines,
        boolean helper,
        Optional<TravelView> travel) {
    public PacketView {
        cartridges = List.copyOf(cartridges);
        medicines = List.copyOf(medicines);
        waiting = List.copyOf(waiting);
        ownLines = Map.copyOf(ownLines);
    }
}

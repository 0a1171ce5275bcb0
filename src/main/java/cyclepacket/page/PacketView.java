package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/** Everything that the patient's packet prints, as texts that are ready to read. */
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
        SupplyView supply,
        TroubleView trouble,
        StorageView storage,
        LogView log,
        Optional<ChangedView> changed) {
    public PacketView {
        cartridges = List.copyOf(cartridges);
        medicines = List.copyOf(medicines);
    }
}

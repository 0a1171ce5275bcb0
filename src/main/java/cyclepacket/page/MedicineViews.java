package cyclepacket.page;

import cyclepacket.plan.Device.CartridgePen;
import cyclepacket.plan.Device.Needle;
import cyclepacket.plan.Device.Prime;
import cyclepacket.plan.HouseRules;
import cyclepacket.plan.Medicine;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Makes the facts of one medicine's page from its product sheet and the clinic's rules. */
final class MedicineViews {
    private final PacketFacts facts;
    private final Words words;

    MedicineViews(PacketFacts facts, Words words) {
        this.facts = facts;
        this.words = words;
    }

    /** A clinic that wipes with alcohol uses soap and water for a patient who avoids it. */
    static boolean usesAlcohol(PacketFacts facts) {
        return facts.files().clinic().rules().swabSkin() == HouseRules.SwabSkin.ALCOHOL
                && !facts.files().plan().avoid().contains("alcohol");
    }

    List<MedicineView> views() {
        return facts.files().medicines().values().stream().map(this::view).toList();
    }

    private MedicineView view(Medicine medicine) {
        Optional<CartridgePen> pen = medicine.device().pen();
        return new MedicineView(
                "how-" + medicine.id(),
                medicine.name(),
                medicine.doorName(),
                medicine.purpose(),
                pen.isPresent() ? "pen" : "syringe",
                pen.map(known -> known.window().name().toLowerCase(Locale.ROOT)).orElse("none"),
                pen.filter(known -> known.prime() == Prime.EACH_INJECTION).isPresent(),
                Long.toString(medicine.hold().toSeconds()),
                pen.map(known -> needle(known.needle())),
                pen.map(known -> Integer.toString(known.openedDays())),
                usesAlcohol(facts),
                medicine.exactTime(),
                others(medicine),
                facts.files().plan().avoid());
    }

    /** The other ready syringes: they look alike, so their names are told apart in print. */
    List<String> others(Medicine medicine) {
        return facts.files().medicines().values().stream()
                .filter(other -> other.device().pen().isEmpty())
                .filter(other -> !other.id().equals(medicine.id()))
                .map(Medicine::name)
                .toList();
    }

    private String needle(Needle needle) {
        return words.fill(
                        "needle",
                        Map.of(
                                "gauge", Integer.toString(needle.gauge()),
                                "length", needle.length().toString()))
                .replace(" mm", AmountWords.NO_BREAK + "mm");
    }
}

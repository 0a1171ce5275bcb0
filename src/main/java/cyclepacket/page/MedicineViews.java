package cyclepacket.page;

import cyclepacket.course.DatedDose;
import cyclepacket.plan.Device;
import cyclepacket.plan.Device.CartridgePen;
import cyclepacket.plan.Device.Needle;
import cyclepacket.plan.Device.Prime;
import cyclepacket.plan.DisposablePen;
import cyclepacket.plan.HouseRules;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Taken;
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
                form(medicine.device()),
                pen.map(known -> known.window().name().toLowerCase(Locale.ROOT)).orElse("none"),
                pen.filter(known -> known.prime() == Prime.EACH_INJECTION).isPresent(),
                Long.toString(medicine.hold().toSeconds()),
                pen.map(known -> needle(known.needle(), words)),
                pen.map(known -> Integer.toString(known.openedDays())),
                usesAlcohol(facts),
                medicine.exactTime(),
                others(medicine),
                facts.files().plan().avoid().stream().map(words::slot).toList(),
                formFacts(medicine),
                new VialViews(facts, words).of(medicine),
                medicine.device().taken().map(taken -> taken(medicine, taken)));
    }

    private static String form(Device device) {
        if (device.pen().isPresent()) {
            return "pen";
        }
        if (device.readySyringe().isPresent()) {
            return "syringe";
        }
        return device.taken().isPresent() ? "taken" : "vial";
    }

    private MedicineView.FormFacts formFacts(Medicine medicine) {
        Optional<Device.ReadySyringe> syringe = medicine.device().readySyringe();
        return new MedicineView.FormFacts(
                medicine.device() instanceof DisposablePen,
                syringe.flatMap(Device.ReadySyringe::bubble)
                        .map(bubble -> bubble.name().toLowerCase(Locale.ROOT).replace('_', '-')),
                syringe.filter(Device.ReadySyringe::keepDark).isPresent(),
                medicine.isIntoMuscle(),
                facts.waits(medicine),
                facts.files().protocol().rows().stream()
                        .filter(row -> row.medicine().equals(medicine.id()))
                        .flatMap(row -> row.pattern().stopRule().stream())
                        .findFirst());
    }

    /** A patch changes on dates, so its page lists them. */
    private TakenView taken(Medicine medicine, Taken taken) {
        List<TakenView.Change> grid = facts.course().dosesOf(medicine.id()).stream()
                .filter(dose -> taken.piece() == Taken.Piece.PATCH)
                .map(DatedDose::date)
                .filter(date -> !date.isBefore(facts.today()))
                .distinct()
                .map(date -> new TakenView.Change(words.clock().day(date)))
                .toList();
        return new TakenView(
                taken.way().name().toLowerCase(Locale.ROOT), taken.piece().word(), taken.halves(), grid);
    }

    /** The other ready syringes: they look alike, so their names are told apart in print. */
    List<String> others(Medicine medicine) {
        return facts.files().medicines().values().stream()
                .filter(other -> medicine.device().readySyringe().isPresent())
                .filter(other -> other.device().readySyringe().isPresent())
                .filter(other -> !other.id().equals(medicine.id()))
                .map(Medicine::name)
                .toList();
    }

    /** For example {@code 30 gauge, 8 mm}. */
    static String needle(Needle needle, Words words) {
        return words.fill(
                        "needle",
                        Map.of(
                                "gauge", Integer.toString(needle.gauge()),
                                "length", needle.length().toString()))
                .replace(" mm", AmountWords.NO_BREAK + "mm");
    }
}

package cyclepacket.intake;

import cyclepacket.plan.Device;
import cyclepacket.plan.Dial;
import cyclepacket.plan.DilutedVial;
import cyclepacket.plan.Dilution;
import cyclepacket.plan.DisposablePen;
import cyclepacket.plan.DrawnVial;
import cyclepacket.plan.KeptVial;
import cyclepacket.plan.MixedVial;
import cyclepacket.plan.OilVial;
import cyclepacket.plan.Syringe;
import cyclepacket.plan.Taken;
import cyclepacket.quantity.Concentration;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseUnit;
import cyclepacket.quantity.Length;
import cyclepacket.quantity.Refusal;
import cyclepacket.quantity.Volume;
import java.util.Optional;

/** Builds the form of a medicine from its sheet. */
final class DeviceBuilder {
    private final Field top;
    private final Amounts amounts;
    private final Part<Syringe> syringe;

    DeviceBuilder(Field top, Amounts amounts, Part<Syringe> syringe) {
        this.top = top;
        this.amounts = amounts;
        this.syringe = syringe;
    }

    /** The word of a form that has a dial and a window. */
    static boolean isPen(Field top) {
        return top.at("form")
                .text()
                .value()
                .filter(form -> form.equals("cartridge-pen") || form.equals("disposable-pen"))
                .isPresent();
    }

    Part<Device> device() {
        return switch (top.at("form").text().value().orElse("")) {
            case "cartridge-pen" -> new Part<>(pen().value().map(pen -> pen));
            case "disposable-pen" -> new Part<>(pen().value().map(DisposablePen::new));
            case "ready-syringe" -> readySyringe();
            case "mixed-vial" -> mixedVial();
            case "kept-vial" -> keptVial();
            case "drawn-vial" -> drawnVial();
            case "diluted-vial" -> dilutedVial();
            case "oil-vial" -> oilVial();
            case "taken" -> taken();
            default -> Part.absent();
        };
    }

    private Part<Device.CartridgePen> pen() {
        Part<Device.Window> window = top.at("window").word(Device.Window.class);
        Part<Dial> dial = dial(top.at("dial"));
        Part<Device.Needle> needle = needle(top.at("needle"));
        Part<Device.Prime> prime = new Part<>(top.at("prime").text().value().map(DeviceBuilder::prime));
        Part<Integer> openedDays = openedDays();
        return Part.whole(
                top,
                () -> new Device.CartridgePen(window.get(), dial.get(), needle.get(), prime.get(), openedDays.get()));
    }

    private Part<Dial> dial(Field dial) {
        Part<Dose> least = amounts.read(dial.at("least"));
        Part<Dose> step = amounts.read(dial.at("step"));
        Part<Dose> most = amounts.read(dial.at("most"));
        return Part.whole(dial, () -> new Dial(least.get(), step.get(), most.get()));
    }

    static Part<Device.Needle> needle(Field needle) {
        Part<Integer> gauge = needle.at("gauge").count();
        Part<Length> length = needle.at("length").parsed("VALUE-FORM", Length::parse);
        return Part.whole(needle, () -> new Device.Needle(gauge.get(), length.get()));
    }

    private static Device.Prime prime(String words) {
        return words.equals(Device.Prime.EACH_INJECTION.words())
                ? Device.Prime.EACH_INJECTION
                : Device.Prime.EACH_NEW_CARTRIDGE;
    }

    private Part<Integer> openedDays() {
        return top.at("store").at("opened-days").count();
    }

    private Part<Device> readySyringe() {
        Part<Optional<Device.Bubble>> bubble = top.at("bubble").ifWritten(field -> field.word(Device.Bubble.class));
        return Part.whole(
                top, () -> new Device.ReadySyringe(bubble.get(), top.at("light").isWritten()));
    }

    private Part<Device> mixedVial() {
        Part<Volume> diluent = volume(top.at("mix").at("diluent"));
        Part<Device.Needle> mixNeedle = needle(top.at("mix").at("needle"));
        Part<Device.Needle> giveNeedle = needle(top.at("needle"));
        return Part.whole(
                top.at("mix"), () -> new MixedVial(diluent.get(), syringe.get(), mixNeedle.get(), giveNeedle.get()));
    }

    private Part<Device> keptVial() {
        Part<Volume> diluent = volume(top.at("mix").at("diluent"));
        Part<Concentration> strength = strength();
        Part<Device.Needle> mixNeedle = needle(top.at("mix").at("needle"));
        Part<Device.Needle> giveNeedle = needle(top.at("needle"));
        Part<Integer> openedDays = openedDays();
        return Part.whole(
                top.at("mix"),
                () -> new KeptVial(
                        diluent.get(),
                        strength.get(),
                        syringe.get(),
                        mixNeedle.get(),
                        giveNeedle.get(),
                        openedDays.get()));
    }

    private Part<Device> drawnVial() {
        Part<Concentration> strength = strength();
        Part<Device.Needle> needle = needle(top.at("needle"));
        Part<Integer> openedDays = openedDays();
        return Part.whole(top, () -> new DrawnVial(strength.get(), syringe.get(), needle.get(), openedDays.get()));
    }

    private Part<Device> dilutedVial() {
        Part<Dilution> dilution = dilution(top.at("dilute"));
        Part<Concentration> strength = strength();
        Part<Device.Needle> needle = needle(top.at("needle"));
        Part<Integer> openedDays = openedDays();
        return Part.whole(
                top,
                () -> new DilutedVial(dilution.get(), strength.get(), syringe.get(), needle.get(), openedDays.get()));
    }

    private static Part<Dilution> dilution(Field dilute) {
        Part<Concentration> stock = dilute.at("stock").parsed("VALUE-FORM", Concentration::parse);
        Part<Volume> take = volume(dilute.at("take"));
        Part<Volume> with = volume(dilute.at("with"));
        Part<Dilution.MadeBy> madeBy = dilute.at("by").word(Dilution.MadeBy.class);
        return Part.whole(dilute, () -> new Dilution(stock.get(), take.get(), with.get(), madeBy.get()));
    }

    private Part<Device> oilVial() {
        Part<Concentration> strength = strength();
        Part<Device.Needle> drawNeedle = needle(top.at("draw").at("needle"));
        Part<Device.Needle> giveNeedle = needle(top.at("needle"));
        Part<Integer> openedDays = openedDays();
        Part<String> oil = top.at("oil").text();
        return Part.whole(
                top,
                () -> new OilVial(
                        strength.get(),
                        syringe.get(),
                        drawNeedle.get(),
                        giveNeedle.get(),
                        openedDays.get(),
                        oil.get()));
    }

    private Part<Device> taken() {
        Field taken = top.at("taken");
        Part<Taken.Way> way = taken.at("way").word(Taken.Way.class);
        Part<Taken.Piece> piece = taken.at("piece").word(Taken.Piece.class);
        Part<Optional<Boolean>> halves = taken.at("halves").ifWritten(Field::truth);
        return Part.whole(
                taken, () -> new Taken(way.get(), piece.get(), halves.get().orElse(false)));
    }

    static Part<Volume> volume(Field field) {
        return field.parsed("VALUE-FORM", Volume::parse);
    }

    /** In the unit of the medicine: a strength in another unit is how a tenfold or thousandfold error starts. */
    private Part<Concentration> strength() {
        Optional<DoseUnit> unit = MedicineBuilder.unit(top.sheet());
        return top.at("strength").parsed("UNIT-CLASH", text -> {
            Concentration strength = Concentration.parse(text);
            if (unit.isPresent() && strength.amount().unit() != unit.get()) {
                throw new Refusal(
                        "the strength is in " + strength.amount().unit().word() + " and the medicine in "
                                + unit.get().word(),
                        "ask the pharmacy for the strength in " + unit.get().word() + "; never convert it");
            }
            return strength;
        });
    }
}

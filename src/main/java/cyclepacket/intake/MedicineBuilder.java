package cyclepacket.intake;

import cyclepacket.plan.Device;
import cyclepacket.plan.KeptVial;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.StockVial;
import cyclepacket.plan.Syringe;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseRange;
import cyclepacket.quantity.DoseUnit;
import cyclepacket.quantity.Money;
import cyclepacket.quantity.Refusal;
import cyclepacket.quantity.TemperatureRange;
import cyclepacket.quantity.Volume;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Builds the record of one medicine file. */
final class MedicineBuilder {
    private static final int LONGEST_HOLD_SECONDS = 60;

    private final Field top;
    private final Amounts amounts;
    private final Part<Syringe> syringe;

    /** @param syringe the empty syringe that the sheet names, if it names one */
    MedicineBuilder(Sheet sheet, Part<Syringe> syringe) {
        this.top = sheet.top();
        this.syringe = syringe;
        this.amounts = new Amounts(top.at("medicine").text().value().orElse("this medicine"), unit(sheet));
    }

    /** The unit of a medicine file, even when other lines of it are broken. */
    static Optional<DoseUnit> unit(Sheet sheet) {
        return sheet.top().at("amount-in").text().value().flatMap(DoseUnit::ofWord);
    }

    Part<Medicine> medicine() {
        Part<String> id = top.at("medicine").text();
        Part<String> name = top.at("name").text();
        Part<String> doorName = top.at("door-name").text();
        Part<String> purpose = top.at("purpose").text();
        Part<Device> device = new DeviceBuilder(top, amounts, syringe).device();
        Part<DoseUnit> unit = new Part<>(unit(top.sheet()));
        Part<String> route = top.at("route").text();
        Part<Duration> hold = hold(top.at("hold"));
        Part<List<Medicine.Size>> sizes = sizes(device);
        Part<Optional<Medicine.DailyLimit>> daily = top.at("daily").ifWritten(this::daily);
        Part<Optional<Duration>> mostHours = top.at("most-hours-between").ifWritten(Calendar::hours);
        Part<Medicine.Storage> store = store(top.at("store"));
        Part<List<String>> contains = top.at("contains").each(Substances::read);
        Part<String> source = top.at("source").text();
        return Part.whole(
                top,
                () -> new Medicine(
                        id.get(),
                        name.get(),
                        doorName.get(),
                        purpose.get(),
                        device.get(),
                        unit.get(),
                        route.get(),
                        hold.get(),
                        sizes.get(),
                        daily.get(),
                        top.at("timing").isWritten(),
                        mostHours.get(),
                        store.get(),
                        contains.get(),
                        source.get()));
    }

    private Part<List<Medicine.Size>> sizes(Part<Device> device) {
        Set<Dose> seen = new HashSet<>();
        return top.at("sizes").each(line -> {
            Part<Medicine.Size> size = size(line, device.value().flatMap(Device::stockVial));
            size.value()
                    .filter(s -> !seen.add(s.label()))
                    .ifPresent(s -> line.at("label")
                            .stop(
                                    "SIZE-TWICE",
                                    "the size " + s.label() + " stands here twice",
                                    "keep one of the two lines"));
            return size;
        });
    }

    private Part<Medicine.Size> size(Field line, Optional<StockVial> vial) {
        Part<Dose> label = amounts.read(line.at("label"));
        vial.ifPresent(kind -> label.value().ifPresent(amount -> agreesWithStrength(line, kind, amount)));
        Part<DoseRange> gives = DeviceBuilder.isPen(top)
                ? amounts.range(line.at("gives"))
                : new Part<>(label.value().map(DoseRange::exactly));
        Part<Optional<Money>> price = line.at("price").ifWritten(p -> p.attempt("VALUE-RANGE", p.number(), Money::of));
        return Part.whole(line, () -> new Medicine.Size(label.get(), gives.get(), price.get()));
    }

    /** Amount, volume and strength say the same thing twice, so that one moved point shows. */
    private static void agreesWithStrength(Field line, StockVial vial, Dose label) {
        Optional<Volume> written = vial instanceof KeptVial kept
                ? Optional.of(kept.diluent())
                : DeviceBuilder.volume(line.at("volume")).value();
        Optional<Dose> held = written.flatMap(vial.strength()::doseIn);
        if (written.isPresent() && !held.equals(Optional.of(label))) {
            line.at("label")
                    .stop(
                            "STRENGTH-DIFFERS",
                            written.get() + " at " + vial.strength() + " is "
                                    + held.map(Dose::toString).orElse("no exact amount") + ", not " + label,
                            "copy amount, volume and strength from the label again; a point may have moved");
        }
    }

    private Part<Medicine.DailyLimit> daily(Field daily) {
        Part<Dose> warnAbove = amounts.read(daily.at("warn-above"));
        Part<Dose> stopAbove = amounts.read(daily.at("stop-above"));
        return Part.whole(daily, () -> new Medicine.DailyLimit(warnAbove.get(), stopAbove.get()));
    }

    private static Part<Medicine.Storage> store(Field store) {
        Part<TemperatureRange> unopened = temperature(store.at("unopened"));
        Part<Optional<TemperatureRange>> opened = store.at("opened").ifWritten(MedicineBuilder::temperature);
        return Part.whole(store, () -> new Medicine.Storage(unopened.get(), opened.get()));
    }

    private static Part<TemperatureRange> temperature(Field field) {
        return field.parsed("VALUE-FORM", TemperatureRange::parse);
    }

    /** What is taken without a needle holds nothing; the schema asks for it everywhere else. */
    private static Part<Duration> hold(Field field) {
        return field.isWritten() ? field.parsed("VALUE-FORM", MedicineBuilder::hold) : Part.of(Duration.ZERO);
    }

    static Duration hold(String text) {
        if (!text.matches("[0-9]{1,2} s")) {
            throw new Refusal(
                    Characters.quoted(text) + " is not a time to hold", "write the leaflet's seconds, a space and s");
        }
        int seconds = Integer.parseInt(text.substring(0, text.length() - 2));
        if (seconds < 1 || seconds > LONGEST_HOLD_SECONDS) {
            throw new Refusal("a hold is from 1 to 60 seconds", "copy hold from the product's leaflet");
        }
        return Duration.ofSeconds(seconds);
    }
}

package cyclepacket.intake;

import cyclepacket.plan.Device;
import cyclepacket.plan.Dial;
import cyclepacket.plan.Medicine;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseRange;
import cyclepacket.quantity.DoseUnit;
import cyclepacket.quantity.Length;
import cyclepacket.quantity.Money;
import cyclepacket.quantity.Refusal;
import cyclepacket.quantity.TemperatureRange;
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

    MedicineBuilder(Sheet sheet) {
        this.top = sheet.top();
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
        Part<Device> device = device();
        Part<DoseUnit> unit = new Part<>(unit(top.sheet()));
        Part<String> route = top.at("route").text();
        Part<Duration> hold = top.at("hold").parsed("VALUE-FORM", MedicineBuilder::hold);
        Part<List<Medicine.Size>> sizes = sizes();
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

    private Part<Device> device() {
        if (!isPen()) {
            return new Part<>(top.at("form").text().value().map(form -> new Device.ReadySyringe()));
        }
        Part<Device.Window> window = top.at("window").word(Device.Window.class);
        Part<Dial> dial = dial(top.at("dial"));
        Part<Device.Needle> needle = needle(top.at("needle"));
        Part<Device.Prime> prime = new Part<>(top.at("prime").text().value().map(MedicineBuilder::prime));
        Part<Integer> openedDays = top.at("store").at("opened-days").count();
        return Part.whole(
                top,
                () -> new Device.CartridgePen(window.get(), dial.get(), needle.get(), prime.get(), openedDays.get()));
    }

    private boolean isPen() {
        return top.at("form").text().value().filter("cartridge-pen"::equals).isPresent();
    }

    private Part<Dial> dial(Field dial) {
        Part<Dose> least = amounts.read(dial.at("least"));
        Part<Dose> step = amounts.read(dial.at("step"));
        Part<Dose> most = amounts.read(dial.at("most"));
        return Part.whole(dial, () -> new Dial(least.get(), step.get(), most.get()));
    }

    private static Part<Device.Needle> needle(Field needle) {
        Part<Integer> gauge = needle.at("gauge").count();
        Part<Length> length = needle.at("length").parsed("VALUE-FORM", Length::parse);
        return Part.whole(needle, () -> new Device.Needle(gauge.get(), length.get()));
    }

    private static Device.Prime prime(String words) {
        return words.equals(Device.Prime.EACH_INJECTION.words())
                ? Device.Prime.EACH_INJECTION
                : Device.Prime.EACH_NEW_CARTRIDGE;
    }

    private Part<List<Medicine.Size>> sizes() {
        Set<Dose> seen = new HashSet<>();
        return top.at("sizes").each(line -> {
            Part<Medicine.Size> size = size(line);
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

    private Part<Medicine.Size> size(Field line) {
        Part<Dose> label = amounts.read(line.at("label"));
        Part<DoseRange> gives = isPen()
                ? amounts.range(line.at("gives"))
                : new Part<>(label.value().map(DoseRange::exactly));
        Part<Optional<Money>> price = line.at("price").ifWritten(p -> p.attempt("VALUE-RANGE", p.number(), Money::of));
        return Part.whole(line, () -> new Medicine.Size(label.get(), gives.get(), price.get()));
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

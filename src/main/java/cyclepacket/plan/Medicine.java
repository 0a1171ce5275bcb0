package cyclepacket.plan;

import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseRange;
import cyclepacket.quantity.DoseUnit;
import cyclepacket.quantity.Money;
import cyclepacket.quantity.Refusal;
import cyclepacket.quantity.TemperatureRange;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One product sheet.
 *
 * @param id the name that plans and protocols use, for example {@code fsh-pen}
 * @param name the generic (INN) name
 * @param doorName what the door page calls it; says nothing of its purpose
 * @param hold how long to hold after the injection, 1 to 60 seconds; zero for what is taken without a needle
 * @param exactTime true when it is given at an exact minute
 * @param mostHoursBetween elapsed hours that two doses may lie apart, if the product sets a limit
 * @param contains things some people avoid, for example {@code latex}
 * @param source where the numbers of the sheet come from
 */
public record Medicine(
        String id,
        String name,
        String doorName,
        String purpose,
        Device device,
        DoseUnit unit,
        String route,
        Duration hold,
        List<Size> sizes,
        Optional<DailyLimit> daily,
        boolean exactTime,
        Optional<Duration> mostHoursBetween,
        Storage store,
        List<String> contains,
        String source) {
    public Medicine {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(doorName, "doorName");
        Objects.requireNonNull(purpose, "purpose");
        Objects.requireNonNull(device, "device");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(route, "route");
        Objects.requireNonNull(hold, "hold");
        sizes = List.copyOf(sizes);
        Objects.requireNonNull(daily, "daily");
        Objects.requireNonNull(mostHoursBetween, "mostHoursBetween");
        Objects.requireNonNull(store, "store");
        contains = List.copyOf(contains);
        Objects.requireNonNull(source, "source");
        if (sizes.isEmpty()) {
            throw new Refusal("a medicine has at least one size", "add a line under sizes");
        }
    }

    /** Whether it is injected into a muscle; every other injection goes under the skin. */
    public boolean isIntoMuscle() {
        return route.equals("into muscle");
    }

    /** Whether a needle gives it. */
    public boolean isInjected() {
        return device.taken().isEmpty();
    }

    /** The size that is sold under this label. */
    public Optional<Size> sizeLabelled(Dose label) {
        return sizes.stream().filter(size -> size.label().equals(label)).findFirst();
    }

    /**
     * One size as sold.
     *
     * @param label the amount on the box, above zero
     * @param gives least and most that reach the patient from one container after its first priming
     */
    public record Size(Dose label, DoseRange gives, Optional<Money> price) {
        public Size {
            Objects.requireNonNull(label, "label");
            Objects.requireNonNull(gives, "gives");
            Objects.requireNonNull(price, "price");
            if (label.isZero() || gives.least().isZero()) {
                throw new Refusal("a size holds more than zero", "copy the amount from the box");
            }
        }
    }

    /** Amounts a day above which the clinic wants to be asked, and above which nothing is printed. */
    public record DailyLimit(Dose warnAbove, Dose stopAbove) {
        public DailyLimit {
            Objects.requireNonNull(warnAbove, "warnAbove");
            Objects.requireNonNull(stopAbove, "stopAbove");
            if (warnAbove.isMoreThan(stopAbove)) {
                throw new Refusal("warn-above is more than stop-above", "swap the two numbers");
            }
        }
    }

    /** Where it is kept before and after opening. */
    public record Storage(TemperatureRange unopened, Optional<TemperatureRange> opened) {
        public Storage {
            Objects.requireNonNull(unopened, "unopened");
            Objects.requireNonNull(opened, "opened");
        }
    }
}

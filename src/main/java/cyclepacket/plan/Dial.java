package cyclepacket.plan;

import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Refusal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * What a pen can be set to: multiples of {@code step} from {@code least} to {@code most}, at most 1,000 of them.
 *
 * @param least the smallest setting, a multiple of step above zero
 * @param step the distance between two settings, above zero
 * @param most the largest setting, a multiple of step
 */
public record Dial(Dose least, Dose step, Dose most) {
    /** A dial has marks that a person reads; a finer one is a slip in its step. A technical limit. */
    private static final int MOST_SETTINGS = 1_000;

    public Dial {
        Objects.requireNonNull(least, "least");
        Objects.requireNonNull(step, "step");
        Objects.requireNonNull(most, "most");
        if (step.isZero() || least.isZero()) {
            throw new Refusal(
                    "a dial starts above zero and moves by more than zero",
                    "copy least and step from the device's leaflet");
        }
        if (!least.isMultipleOf(step) || !most.isMultipleOf(step) || least.isMoreThan(most)) {
            throw new Refusal(
                    "least and most of a dial are multiples of its step, least first",
                    "copy least, step and most from the device's leaflet");
        }
        if (most.minus(least).isMoreThan(step.times(MOST_SETTINGS - 1))) {
            throw new Refusal(
                    "a dial with more than 1,000 settings cannot be right",
                    "copy least, step and most from the device's leaflet");
        }
    }

    public boolean has(Dose setting) {
        return setting.isMultipleOf(step) && !setting.isLessThan(least) && !setting.isMoreThan(most);
    }

    /** The nearest mark at or below, which may lie outside least and most. */
    public Dose markAtOrBelow(Dose amount) {
        return amount.toMultipleOf(step, RoundingMode.FLOOR);
    }

    /** The nearest mark at or above, which may lie outside least and most. */
    public Dose markAtOrAbove(Dose amount) {
        return amount.toMultipleOf(step, RoundingMode.CEILING);
    }
}

package cyclepacket.quantity;

import java.util.Objects;

/** A closed range of amounts in one unit: both ends belong to it. */
public record DoseRange(Dose least, Dose most) {
    public DoseRange {
        Objects.requireNonNull(least, "least");
        Objects.requireNonNull(most, "most");
        if (least.isMoreThan(most)) {
            throw new Refusal(
                    "the least, " + least + ", is more than the most, " + most, "write the smaller number first");
        }
    }

    public static DoseRange exactly(Dose amount) {
        return new DoseRange(amount, amount);
    }

    public boolean contains(Dose amount) {
        return !amount.isLessThan(least) && !amount.isMoreThan(most);
    }

    public boolean isExact() {
        return least.equals(most);
    }

    @Override
    public String toString() {
        return isExact() ? least.toString() : least.number().toPlainString() + " to " + most;
    }
}

package cyclepacket.ledger;

import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Refusal;
import java.util.Objects;

/**
 * What is still owed when a container stops: a closed range, or one that starts just above zero.
 *
 * @param isAboveZero whether {@code least} is zero and does not itself belong to the range: then the setting ran through
 */
public record Owed(Dose least, Dose most, boolean isAboveZero) {
    public Owed {
        Objects.requireNonNull(least, "least");
        Objects.requireNonNull(most, "most");
        if (least.isMoreThan(most) || (isAboveZero && !least.isZero())) {
            throw new Refusal("owed " + least + " to " + most + " is no range", "the smaller amount comes first");
        }
    }

    /** One exact amount, from a number that was read. */
    public boolean isExact() {
        return least.equals(most);
    }

    public boolean contains(Dose amount) {
        boolean notBelow = isAboveZero ? amount.isMoreThan(least) : !amount.isLessThan(least);
        return notBelow && !amount.isMoreThan(most);
    }
}

package cyclepacket.quantity;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * A line on the scale of a syringe, by the number that stands, or would stand, beside it. It is never an amount of
 * medicine: the same line holds another amount in every strength.
 *
 * @param number zero or more
 */
public record Mark(BigDecimal number) {
    public Mark {
        Objects.requireNonNull(number, "number");
        if (number.signum() < 0) {
            throw new Refusal("a mark is zero or more", "read the number beside the line");
        }
        number = PlainDecimal.of(number);
    }

    /** For example {@code 80 mark}. */
    @Override
    public String toString() {
        return number.toPlainString() + " mark";
    }
}

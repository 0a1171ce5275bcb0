package cyclepacket.quantity;

import java.math.BigDecimal;

/** A number as people write it: no zeros after its last decimal, and no exponent. */
final class PlainDecimal {
    private PlainDecimal() {}

    /** The same value with as few decimals as it needs, none for a whole number. */
    static BigDecimal of(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.setScale(Math.max(0, stripped.scale()));
    }
}

package cyclepacket.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length, for example of a needle.
 *
 * @param micrometres thousandths of a millimetre, above zero
 */
public record Length(long micrometres) {
    public Length {
        if (micrometres <= 0) {
            throw new Refusal("a length is above zero", "write for example 8 mm");
        }
    }

    /** Reads for example {@code 8 mm} or {@code 12.7 mm}. */
    public static Length parse(String text) {
        if (!text.matches("\\d{1,4}(\\.\\d{1,3})? mm")) {
            throw new Refusal("\"" + text + "\" is not a length", "write it in millimetres, for example 8 mm");
        }
        return new Length(new BigDecimal(text.substring(0, text.length() - " mm".length()))
                .setScale(3, RoundingMode.UNNECESSARY)
                .unscaledValue()
                .longValueExact());
    }

    @Override
    public String toString() {
        return BigDecimal.valueOf(micrometres, 3).stripTrailingZeros().toPlainString() + " mm";
    }
}

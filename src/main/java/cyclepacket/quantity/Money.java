package cyclepacket.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A price in the clinic's currency.
 *
 * @param hundredths hundredths of the currency, zero or more
 */
public record Money(long hundredths) {
    public Money {
        if (hundredths < 0) {
            throw new Refusal("a price cannot be below zero", "write the price without a minus sign");
        }
    }

    /** @throws Refusal if the price has more than two decimals or is out of range */
    public static Money of(BigDecimal price) {
        BigDecimal plain = price.stripTrailingZeros();
        if (plain.scale() > 2 || plain.precision() - plain.scale() > 9) {
            throw new Refusal(
                    "a price has at most two decimals and nine digits before them", "write for example 315.50");
        }
        return new Money(
                plain.setScale(2, RoundingMode.UNNECESSARY).unscaledValue().longValueExact());
    }

    public Money plus(Money other) {
        return new Money(Math.addExact(hundredths, other.hundredths));
    }

    public BigDecimal number() {
        return PlainDecimal.of(BigDecimal.valueOf(hundredths, 2));
    }

    @Override
    public String toString() {
        return number().toPlainString();
    }
}

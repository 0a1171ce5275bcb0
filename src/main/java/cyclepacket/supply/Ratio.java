package cyclepacket.supply;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * An exact fraction, zero or more: a chance, or a mean of whole numbers.
 *
 * @param part the numerator
 * @param whole the denominator, above zero; both in lowest terms
 */
public record Ratio(BigInteger part, BigInteger whole) implements Comparable<Ratio> {
    /** By definition. */
    public static final Ratio ZERO = of(0, 1);

    public Ratio {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(whole, "whole");
        if (whole.signum() <= 0 || part.signum() < 0) {
            throw new IllegalArgumentException("not a fraction from zero up: " + part + "/" + whole);
        }
        BigInteger shared = part.gcd(whole);
        part = part.divide(shared);
        whole = whole.divide(shared);
    }

    public static Ratio of(long part, long whole) {
        return new Ratio(BigInteger.valueOf(part), BigInteger.valueOf(whole));
    }

    public Ratio plus(Ratio other) {
        return new Ratio(part.multiply(other.whole).add(other.part.multiply(whole)), whole.multiply(other.whole));
    }

    public Ratio times(Ratio other) {
        return new Ratio(part.multiply(other.part), whole.multiply(other.whole));
    }

    public Ratio times(long factor) {
        return times(of(factor, 1));
    }

    public boolean isZero() {
        return part.signum() == 0;
    }

    /** As a decimal number with so many places; the rounding is always spelled out. */
    public BigDecimal rounded(int decimals, RoundingMode rounding) {
        return new BigDecimal(part).divide(new BigDecimal(whole), decimals, rounding);
    }

    @Override
    public int compareTo(Ratio other) {
        return part.multiply(other.whole).compareTo(other.part.multiply(whole));
    }

    @Override
    public String toString() {
        return part + "/" + whole;
    }
}

package cyclepacket.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * An amount of one medicine, exact to a thousandth of its unit, from zero to {@value #MOST_MILLI_UNITS} thousandths.
 *
 * @param milliUnits thousandths of {@code unit}, zero or more
 * @param unit the unit the medicine is ordered in
 */
public record Dose(long milliUnits, DoseUnit unit) implements Comparable<Dose> {
    /** Ten million million units: far above any sum that a course of accepted amounts can make, and safe in a long. A technical limit. */
    public static final long MOST_MILLI_UNITS = 10_000_000_000_000_000L;

    /** By definition of the smallest unit, a thousandth. */
    private static final int DECIMALS = 3;

    /** A technical limit. Before the point; more is out of range, and need not be spelled out to be refused. */
    private static final int MOST_DIGITS = 14;

    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9]\\d*)(\\.\\d+)?");
    private static final String RANGE = "write an amount from 0 to 10,000,000,000,000";

    public Dose {
        Objects.requireNonNull(unit, "unit");
        if (milliUnits < 0 || milliUnits > MOST_MILLI_UNITS) {
            throw new Refusal(
                    "an amount of " + BigDecimal.valueOf(milliUnits, DECIMALS).toPlainString() + " is out of range",
                    RANGE);
        }
    }

    // Written out: what Java makes for a record is put together when first asked, a hundredth of a short run.
    @Override
    public boolean equals(Object other) {
        return other instanceof Dose dose && milliUnits == dose.milliUnits && unit == dose.unit;
    }

    @Override
    public int hashCode() {
        return 31 * Long.hashCode(milliUnits) + unit.hashCode();
    }

    /** Reads {@code units} as a plain decimal number of units, for example {@code "187.5"}. */
    public static Dose ofUnits(String units) {
        return of(units, DoseUnit.UNITS);
    }

    /**
     * Reads a plain decimal number: digits of the Latin script, no exponent, no leading zero.
     *
     * @throws Refusal if it is not a number, is negative or has more than three decimals
     */
    public static Dose of(String number, DoseUnit unit) {
        if (!NUMBER.matcher(number).matches()) {
            throw new Refusal("\"" + number + "\" is not a number", "write digits, for example 187.5");
        }
        return of(new BigDecimal(number), unit);
    }

    /** @throws Refusal if the number is negative, too large or has more than three decimals */
    public static Dose of(BigDecimal number, DoseUnit unit) {
        if (number.signum() < 0) {
            throw new Refusal("an amount cannot be below zero", "write the amount without a minus sign");
        }
        BigDecimal plain = number.stripTrailingZeros();
        if (plain.scale() > DECIMALS) {
            throw new Refusal(
                    "an amount has at most three decimals", "write the amount that was ordered, digit by digit");
        }
        if (plain.precision() - plain.scale() > MOST_DIGITS) {
            throw new Refusal("an amount this large is out of range", RANGE);
        }
        return new Dose(
                plain.setScale(DECIMALS, RoundingMode.UNNECESSARY)
                        .unscaledValue()
                        .longValueExact(),
                unit);
    }

    /**
     * The same amount in another unit. Milligrams and micrograms convert; units convert to nothing but units.
     *
     * @throws UnitClash if the two units measure different things
     * @throws Refusal if it would have more than three decimals
     */
    public Dose in(DoseUnit other) {
        if (unit == other) {
            return this;
        }
        if (unit == DoseUnit.UNITS || other == DoseUnit.UNITS) {
            throw new UnitClash(this, zero(other));
        }
        return of(unit == DoseUnit.MG ? number().movePointRight(3) : number().movePointLeft(3), other);
    }

    public static Dose zero(DoseUnit unit) {
        return new Dose(0, unit);
    }

    /** Undoes {@link #toString()}. */
    public static Dose parse(String text) {
        int space = text.lastIndexOf(' ');
        if (space < 0) {
            throw new Refusal("\"" + text + "\" has no unit", "write the number, a space and the unit");
        }
        DoseUnit unit = DoseUnit.ofWord(text.substring(space + 1))
                .orElseThrow(() -> new Refusal("\"" + text + "\" has no known unit", "use units, mcg or mg"));
        return of(text.substring(0, space), unit);
    }

    public Dose plus(Dose other) {
        return new Dose(Math.addExact(milliUnits, sameUnit(other)), unit);
    }

    /** @throws Refusal if {@code other} is larger: there is no amount below zero */
    public Dose minus(Dose other) {
        return new Dose(Math.subtractExact(milliUnits, sameUnit(other)), unit);
    }

    public Dose times(int count) {
        return new Dose(Math.multiplyExact(milliUnits, count), unit);
    }

    /** @throws Refusal if it would have more than three decimals */
    public Dose half() {
        if (milliUnits % 2 != 0) {
            throw new Refusal("half of " + this + " has more than three decimals", "write the amount out");
        }
        return new Dose(milliUnits / 2, unit);
    }

    public Dose min(Dose other) {
        return compareTo(other) <= 0 ? this : other;
    }

    public Dose max(Dose other) {
        return compareTo(other) >= 0 ? this : other;
    }

    public boolean isZero() {
        return milliUnits == 0;
    }

    public boolean isLessThan(Dose other) {
        return compareTo(other) < 0;
    }

    public boolean isMoreThan(Dose other) {
        return compareTo(other) > 0;
    }

    public boolean isMultipleOf(Dose step) {
        return milliUnits % step.requireStep(this) == 0;
    }

    /** The multiple of {@code step} that {@code rounding} chooses; the rounding is always spelled out. */
    public Dose toMultipleOf(Dose step, RoundingMode rounding) {
        long size = step.requireStep(this);
        BigDecimal count = BigDecimal.valueOf(milliUnits).divide(BigDecimal.valueOf(size), 0, rounding);
        return new Dose(Math.multiplyExact(count.longValueExact(), size), unit);
    }

    private long requireStep(Dose dividend) {
        dividend.sameUnit(this);
        if (milliUnits == 0) {
            throw new Refusal("a step of zero divides nothing", "write a step above zero");
        }
        return milliUnits;
    }

    private long sameUnit(Dose other) {
        if (unit != other.unit) {
            throw new UnitClash(this, other);
        }
        return other.milliUnits;
    }

    @Override
    public int compareTo(Dose other) {
        return Long.compare(milliUnits, sameUnit(other));
    }

    /** The number without its unit and without trailing zeros, for example {@code 187.5}. */
    public BigDecimal number() {
        return PlainDecimal.of(BigDecimal.valueOf(milliUnits, DECIMALS));
    }

    /** The number and its unit with a plain space, the same in every locale; what a patient reads is made elsewhere. */
    @Override
    public String toString() {
        return number().toPlainString() + " " + unit.word();
    }
}

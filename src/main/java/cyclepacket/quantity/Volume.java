package cyclepacket.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A volume of liquid in whole microlitres, from zero to one litre.
 *
 * @param microlitres thousandths of a millilitre, 0 to {@value #MOST_MICROLITRES}
 */
public record Volume(long microlitres) implements Comparable<Volume> {
    /** One litre: far above any syringe or vial. A technical limit. */
    public static final long MOST_MICROLITRES = 1_000_000;

    private static final String UNIT = " mL";

    /** By definition of the smallest unit, a thousandth. */
    private static final int DECIMALS = 3;

    public Volume {
        if (microlitres < 0 || microlitres > MOST_MICROLITRES) {
            throw new Refusal("a volume of " + microlitres + " microlitres is out of range", "write 0 to 1000 mL");
        }
    }

    public static Volume ofMicrolitres(long microlitres) {
        return new Volume(microlitres);
    }

    /**
     * Reads for example {@code 0.75 mL}; undoes {@link #toString()}.
     *
     * @throws Refusal if it is not a number of mL with at most three decimals
     */
    public static Volume parse(String text) {
        if (!text.matches("(0|[1-9]\\d{0,3})(\\.\\d{1,3})? mL")) {
            throw new Refusal("\"" + text + "\" is not a volume", "write it in millilitres, for example 0.75 mL");
        }
        return new Volume(new BigDecimal(text.substring(0, text.length() - UNIT.length()))
                .setScale(DECIMALS, RoundingMode.UNNECESSARY)
                .unscaledValue()
                .longValueExact());
    }

    public Volume plus(Volume other) {
        return new Volume(Math.addExact(microlitres, other.microlitres));
    }

    /** @throws Refusal if {@code other} is larger: there is no volume below zero */
    public Volume minus(Volume other) {
        return new Volume(Math.subtractExact(microlitres, other.microlitres));
    }

    public Volume times(int count) {
        return new Volume(Math.multiplyExact(microlitres, count));
    }

    public boolean isZero() {
        return microlitres == 0;
    }

    public boolean isMoreThan(Volume other) {
        return compareTo(other) > 0;
    }

    /** Whether a whole number of {@code step} makes this volume; false for a step of zero. */
    public boolean isMultipleOf(Volume step) {
        return step.microlitres != 0 && microlitres % step.microlitres == 0;
    }

    /** How many whole times {@code part}, a volume above zero, is in it. */
    public int wholeTimes(Volume part) {
        if (part.isZero()) {
            throw new Refusal("a volume of zero divides nothing", "write a volume above zero");
        }
        return Math.toIntExact(microlitres / part.microlitres);
    }

    /** Millilitres without trailing zeros, for example {@code 0.75}. */
    public BigDecimal millilitres() {
        return PlainDecimal.of(BigDecimal.valueOf(microlitres, DECIMALS));
    }

    @Override
    public int compareTo(Volume other) {
        return Long.compare(microlitres, other.microlitres);
    }

    @Override
    public String toString() {
        return millilitres().toPlainString() + UNIT;
    }
}

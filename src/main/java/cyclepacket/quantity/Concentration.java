package cyclepacket.quantity;

import java.math.BigInteger;
import java.util.Objects;
import java.util.Optional;

/**
 * How much medicine a volume of liquid holds, kept as the pair that was written: nothing is divided until it comes out
 * exactly.
 *
 * @param amount above zero
 * @param in the volume that holds it, above zero
 */
public record Concentration(Dose amount, Volume in) {
    private static final String BETWEEN = " in ";

    public Concentration {
        Objects.requireNonNull(amount, "amount");
        Objects.requireNonNull(in, "in");
        if (amount.isZero() || in.isZero()) {
            throw new Refusal("a strength is above zero", "copy it from the label, for example 5 mg in 1 mL");
        }
    }

    /** Reads for example {@code 5 mg in 1 mL}. */
    public static Concentration parse(String text) {
        int between = text.indexOf(BETWEEN);
        if (between < 0) {
            throw new Refusal(
                    "\"" + text + "\" is not a strength", "write amount and volume, for example 5 mg in 1 mL");
        }
        return new Concentration(
                Dose.parse(text.substring(0, between)), Volume.parse(text.substring(between + BETWEEN.length())));
    }

    /**
     * The volume that holds a dose.
     *
     * @return empty when it is no whole number of microlitres, or more than a litre
     * @throws UnitClash if the dose is in another unit
     */
    public Optional<Volume> volumeOf(Dose dose) {
        dose.compareTo(amount);
        return whole(big(dose.milliUnits()).multiply(big(in.microlitres())), amount.milliUnits())
                .filter(microlitres -> microlitres.compareTo(big(Volume.MOST_MICROLITRES)) <= 0)
                .map(microlitres -> new Volume(microlitres.longValueExact()));
    }

    /** The dose in a volume; empty when it is no whole number of thousandths, or out of a dose's range. */
    public Optional<Dose> doseIn(Volume volume) {
        return whole(big(amount.milliUnits()).multiply(big(volume.microlitres())), in.microlitres())
                .filter(milliUnits -> milliUnits.compareTo(big(Dose.MOST_MILLI_UNITS)) <= 0)
                .map(milliUnits -> new Dose(milliUnits.longValueExact(), amount.unit()));
    }

    /** How many whole steps of {@code step} the volume of a dose has; what is left over lies between two marks. */
    public long wholeSteps(Dose dose, Volume step) {
        dose.compareTo(amount);
        return big(dose.milliUnits())
                .multiply(big(in.microlitres()))
                .divide(big(amount.milliUnits()).multiply(big(step.microlitres())))
                .longValueExact();
    }

    /** Whether both hold the same amount in the same volume, however they are written. */
    public boolean isAsStrongAs(Concentration other) {
        amount.compareTo(other.amount);
        return big(amount.milliUnits())
                .multiply(big(other.in.microlitres()))
                .equals(big(other.amount.milliUnits()).multiply(big(in.microlitres())));
    }

    private static Optional<BigInteger> whole(BigInteger dividend, long divisor) {
        BigInteger[] parts = dividend.divideAndRemainder(big(divisor));
        return parts[1].signum() == 0 ? Optional.of(parts[0]) : Optional.empty();
    }

    private static BigInteger big(long number) {
        return BigInteger.valueOf(number);
    }

    @Override
    public String toString() {
        return amount + BETWEEN + in;
    }
}

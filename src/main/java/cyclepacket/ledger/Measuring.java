package cyclepacket.ledger;

import cyclepacket.plan.FormRules;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.MixedVial;
import cyclepacket.plan.Syringe;
import cyclepacket.quantity.Concentration;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Volume;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Turns a dose into vials, a volume and a line on a syringe. Nothing is rounded: a dose between two lines has no
 * measure, and says why.
 */
public final class Measuring {
    private final Medicine medicine;
    private final FormRules rules;
    private final Syringe syringe;

    private Measuring(Medicine medicine, FormRules rules, Syringe syringe) {
        this.medicine = medicine;
        this.rules = rules;
        this.syringe = syringe;
    }

    /** For a medicine that is drawn into an empty syringe; empty for every other. */
    public static Optional<Measuring> of(Medicine medicine, FormRules rules) {
        return medicine.device().emptySyringe().map(syringe -> new Measuring(medicine, rules, syringe));
    }

    /** Why a dose cannot be measured. */
    public enum Hitch {
        /** The volume lies between two lines of the syringe. */
        BETWEEN_MARKS,
        /** The volume is more than the syringe holds. */
        DOES_NOT_FIT,
        /** More vials are needed than one diluent may go through. */
        TOO_MANY_VIALS,
        /** The clinic does not say through how many vials one diluent may go. */
        NO_VIAL_RULE
    }

    public Syringe syringe() {
        return syringe;
    }

    /** How many vials are mixed for a dose: part vials count whole. */
    public static int vials(Medicine medicine, Dose dose) {
        Dose label = medicine.sizes().get(0).label();
        Dose whole = dose.toMultipleOf(label, RoundingMode.CEILING);
        return Math.toIntExact(whole.milliUnits() / label.milliUnits());
    }

    /** What the liquid holds when this dose, above zero, is drawn. */
    public Concentration strengthFor(Dose dose) {
        return medicine.device()
                .stockVial()
                .map(vial -> vial.strength())
                .orElseGet(() -> new Concentration(
                        medicine.sizes().get(0).label().times(vials(medicine, dose)), mixed().diluent()));
    }

    private MixedVial mixed() {
        return medicine.device().mixedVial().orElseThrow();
    }

    /** The first thing that keeps this dose, above zero, from being measured. */
    public Optional<Hitch> hitch(Dose dose) {
        if (medicine.device().mixedVial().isPresent()) {
            Optional<Integer> most = Optional.ofNullable(rules.vialsPerDiluent().get(medicine.id()));
            if (most.isEmpty()) {
                return Optional.of(Hitch.NO_VIAL_RULE);
            }
            if (vials(medicine, dose) > most.get()) {
                return Optional.of(Hitch.TOO_MANY_VIALS);
            }
        }
        Concentration strength = strengthFor(dose);
        Optional<Volume> volume = strength.volumeOf(dose);
        if (strength.wholeSteps(dose, syringe.graduation()) > syringe.lines()
                || volume.filter(exact -> !syringe.fits(exact)).isPresent()) {
            return Optional.of(Hitch.DOES_NOT_FIT);
        }
        return volume.filter(syringe::hasLineAt).isPresent() ? Optional.empty() : Optional.of(Hitch.BETWEEN_MARKS);
    }

    /** Empty when something keeps it from being measured, and for a dose of zero. */
    public Optional<Measure> measure(Dose dose) {
        if (dose.isZero() || hitch(dose).isPresent()) {
            return Optional.empty();
        }
        Volume drawn = strengthFor(dose).volumeOf(dose).orElseThrow();
        int vials = medicine.device().mixedVial().isPresent() ? vials(medicine, dose) : 1;
        Dose rest = medicine.device().mixedVial().isPresent()
                ? medicine.sizes().get(0).label().times(vials).minus(dose)
                : Dose.zero(dose.unit());
        return Optional.of(new Measure(dose, vials, drawn, syringe.markAt(drawn), rest));
    }

    /** The largest dose below this one that can be measured, if there is one; for a dose that does not fit, the most that does. */
    public Optional<Dose> nearestBelow(Dose dose) {
        return measurable().filter(dose::isMoreThan).max(Comparator.naturalOrder());
    }

    /** The smallest dose above this one that can be measured, if there is one. */
    public Optional<Dose> nearestAbove(Dose dose) {
        return measurable().filter(other -> other.isMoreThan(dose)).min(Comparator.naturalOrder());
    }

    /**
     * What lies on a line of the syringe, at every strength that can be mixed: another dose may need another number of
     * vials, and then the lines mean other amounts. Lines whose dose has more than three decimals are passed over.
     */
    private Stream<Dose> measurable() {
        return strengths()
                .flatMap(strength -> IntStream.rangeClosed(1, syringe.lines())
                        .mapToObj(line -> strength.doseIn(syringe.graduation().times(line))))
                .flatMap(Optional::stream)
                .filter(dose -> hitch(dose).isEmpty());
    }

    private Stream<Concentration> strengths() {
        Dose label = medicine.sizes().get(0).label();
        int mostVials = medicine.device().mixedVial().isPresent()
                ? rules.vialsPerDiluent().getOrDefault(medicine.id(), 0)
                : 1;
        return IntStream.rangeClosed(1, mostVials).mapToObj(vials -> strengthFor(label.times(vials)));
    }
}

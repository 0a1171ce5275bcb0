package cyclepacket.ledger;

import cyclepacket.plan.FormRules;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.MixedVial;
import cyclepacket.plan.Syringe;
import cyclepacket.quantity.Concentration;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Volume;
import java.math.RoundingMode;
import java.util.Optional;

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

    /** The nearest dose below that lies on a line, if there is one. */
    public Optional<Dose> nearestBelow(Dose dose) {
        return near(dose, -1);
    }

    /** The nearest dose above that lies on a line and fits, if there is one. */
    public Optional<Dose> nearestAbove(Dose dose) {
        return near(dose, 1);
    }

    /** Lines whose dose has more than three decimals are passed over. */
    private Optional<Dose> near(Dose dose, int direction) {
        Concentration strength = strengthFor(dose);
        long line = strength.wholeSteps(dose, syringe.graduation()) + (direction > 0 ? 1 : 0);
        for (; line > 0 && line <= syringe.lines(); line += direction) {
            Volume volume = syringe.graduation().times(Math.toIntExact(line));
            Optional<Dose> exact = strength.doseIn(volume);
            if (exact.isPresent()) {
                return exact;
            }
        }
        return Optional.empty();
    }
}

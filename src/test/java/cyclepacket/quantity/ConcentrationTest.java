package cyclepacket.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ConcentrationTest {
    private static final Concentration FIVE = Concentration.parse("5 mg in 1 mL");

    @Test
    void turnsADoseIntoItsVolume() {
        assertEquals(Optional.of(Volume.parse("0.8 mL")), FIVE.volumeOf(Dose.parse("4 mg")));
        assertEquals(Optional.of(Volume.parse("0.05 mL")), FIVE.volumeOf(Dose.parse("0.25 mg")));
        assertEquals(Optional.of(Dose.parse("4 mg")), FIVE.doseIn(Volume.parse("0.8 mL")));
    }

    @Test
    void givesNoVolumeWhereNoneIsExact() {
        assertEquals(Optional.empty(), Concentration.parse("3 mg in 1 mL").volumeOf(Dose.parse("1 mg")));
        assertEquals(Optional.empty(), Concentration.parse("1 mg in 3 mL").doseIn(Volume.parse("1 mL")));
    }

    /** 5 mg in 1 mL: a litre holds 5000 mg. */
    @Test
    void findsNothingBeyondALitreOrADosesRange() {
        assertEquals(Optional.of(Volume.parse("1000 mL")), FIVE.volumeOf(Dose.parse("5000 mg")));
        assertEquals(Optional.empty(), FIVE.volumeOf(Dose.parse("5000.005 mg")));
        Dose most = new Dose(Dose.MOST_MILLI_UNITS, DoseUnit.MG);
        Concentration strongest = new Concentration(most, Volume.parse("1 mL"));
        assertEquals(Optional.of(most), strongest.doseIn(Volume.parse("1 mL")));
        assertEquals(Optional.empty(), strongest.doseIn(Volume.parse("1.001 mL")));
    }

    @Test
    void refusesAnotherUnit() {
        UnitClash clash = assertThrows(UnitClash.class, () -> FIVE.volumeOf(Dose.parse("4 units")));
        assertEquals(Dose.parse("4 units"), clash.left());
    }

    @Test
    void comparesStrengthsHoweverTheyAreWritten() {
        assertTrue(FIVE.isAsStrongAs(Concentration.parse("14 mg in 2.8 mL")));
        assertEquals(false, FIVE.isAsStrongAs(Concentration.parse("5 mg in 10 mL")));
    }

    /** Volume times concentration is the dose, exactly, whenever there is a volume at all. */
    @Test
    void givesBackTheDoseOfEveryVolumeItFinds() {
        long seed = 20270307;
        Random random = new Random(seed);
        int found = 0;
        for (int each = 0; each < 20_000; each++) {
            Concentration strength = new Concentration(
                    new Dose(1 + random.nextInt(20_000_000), DoseUnit.MCG), new Volume(1 + random.nextInt(20_000)));
            Dose dose = each % 2 == 0
                    ? new Dose(random.nextInt(20_000_000), DoseUnit.MCG)
                    : strength.doseIn(new Volume(random.nextInt(20_000))).orElse(strength.amount());
            Optional<Volume> volume = strength.volumeOf(dose);
            if (volume.isPresent()) {
                found++;
                String at = "seed " + seed + ", case " + each + ": " + dose + " of " + strength;
                BigInteger back = BigInteger.valueOf(volume.get().microlitres())
                        .multiply(BigInteger.valueOf(strength.amount().milliUnits()));
                BigInteger there = BigInteger.valueOf(dose.milliUnits())
                        .multiply(BigInteger.valueOf(strength.in().microlitres()));
                assertEquals(there, back, at);
                assertEquals(Optional.of(dose), strength.doseIn(volume.get()), at);
            }
        }
        assertTrue(found > 5_000, found + " volumes");
    }

    @Test
    void countsWholeStepsBelowADose() {
        assertEquals(5, FIVE.wholeSteps(Dose.parse("0.28 mg"), Volume.parse("0.01 mL")));
        assertEquals(80, FIVE.wholeSteps(Dose.parse("4 mg"), Volume.parse("0.01 mL")));
    }

    @Test
    void readsBackWhatItPrints() {
        assertEquals(FIVE, Concentration.parse(FIVE.toString()));
        assertThrows(Refusal.class, () -> Concentration.parse("5 mg/mL"));
        assertThrows(Refusal.class, () -> Concentration.parse("0 mg in 1 mL"));
        assertThrows(Refusal.class, () -> Concentration.parse("5 mg in 0 mL"));
        assertThrows(Refusal.class, () -> Concentration.parse("5e1 mg in 1 mL"));
    }
}

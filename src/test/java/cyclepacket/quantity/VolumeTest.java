package cyclepacket.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VolumeTest {
    @Test
    void countsWholeMicrolitres() {
        assertEquals(750, Volume.parse("0.75 mL").microlitres());
        assertEquals("2.8 mL", Volume.ofMicrolitres(2800).toString());
        assertEquals("10 mL", Volume.ofMicrolitres(10_000).toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.8", ".8 mL", "0,8 mL", "0.8 ml", "0.0001 mL", "00.8 mL", "1e1 mL", "-1 mL"})
    void refusesWhatIsNoVolume(String text) {
        assertThrows(Refusal.class, () -> Volume.parse(text));
    }

    @Test
    void staysBetweenZeroAndALitre() {
        assertEquals(Volume.parse("1000 mL"), Volume.ofMicrolitres(Volume.MOST_MICROLITRES));
        assertThrows(Refusal.class, () -> Volume.parse("1000.001 mL"));
        assertThrows(Refusal.class, () -> Volume.parse("1 mL").minus(Volume.parse("1.001 mL")));
    }

    @Test
    void countsHowOftenAPartIsInIt() {
        assertEquals(9, Volume.parse("10 mL").wholeTimes(Volume.parse("1.1 mL")));
        assertTrue(Volume.parse("0.8 mL").isMultipleOf(Volume.parse("0.01 mL")));
        assertFalse(Volume.parse("0.805 mL").isMultipleOf(Volume.parse("0.01 mL")));
        assertFalse(Volume.parse("0.8 mL").isMultipleOf(Volume.parse("0 mL")));
        assertThrows(Refusal.class, () -> Volume.parse("1 mL").wholeTimes(Volume.parse("0 mL")));
    }

    @Test
    void addsToTheMicrolitre() {
        Volume dose = Volume.parse("0.25 mL");
        assertEquals(Volume.parse("0.28 mL"), dose.plus(Volume.parse("0.03 mL")));
        assertEquals(Volume.parse("0.22 mL"), dose.minus(Volume.parse("0.03 mL")));
        assertEquals(Volume.parse("7 mL"), dose.times(28));
        assertEquals(new BigDecimal("10"), Volume.parse("10 mL").millilitres());
    }

    @Test
    void comparesBySize() {
        Volume dose = Volume.parse("0.5 mL");
        assertTrue(dose.isMoreThan(Volume.parse("0.499 mL")));
        assertFalse(dose.isMoreThan(dose));
        assertFalse(dose.isMoreThan(Volume.parse("0.501 mL")));
    }

    @Test
    void namesAMarkWithoutAnyUnit() {
        assertEquals("0 mark", new Mark(BigDecimal.ZERO).toString());
        assertEquals(new BigDecimal("10"), new Mark(BigDecimal.TEN).number());
        assertEquals("80 mark", new Mark(new BigDecimal("80.0")).toString());
        assertEquals(new Mark(BigDecimal.TEN), new Mark(new BigDecimal("10.00")));
        assertThrows(Refusal.class, () -> new Mark(new BigDecimal("-1")));
    }

    @Test
    void convertsMilligramsAndMicrogramsAndNothingElse() {
        assertEquals(Dose.parse("5000 mcg"), Dose.parse("5 mg").in(DoseUnit.MCG));
        assertEquals(Dose.parse("0.25 mg"), Dose.parse("250 mcg").in(DoseUnit.MG));
        assertThrows(UnitClash.class, () -> Dose.parse("5 mg").in(DoseUnit.UNITS));
        assertThrows(UnitClash.class, () -> Dose.parse("5 units").in(DoseUnit.MG));
    }

    @Test
    void halvesExactlyOrNotAtAll() {
        assertEquals(Dose.parse("0.25 mg"), Dose.parse("0.5 mg").half());
        assertThrows(Refusal.class, () -> Dose.parse("0.001 mg").half());
    }
}

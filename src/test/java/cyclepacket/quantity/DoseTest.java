package cyclepacket.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DoseTest {
    @Test
    void keepsDecimalsExact() {
        assertEquals(
                "0.3 mg",
                Dose.of("0.1", DoseUnit.MG).plus(Dose.of("0.2", DoseUnit.MG)).toString());
        assertEquals("10000 units", Dose.ofUnits("10000.000").toString());
    }

    @Test
    void refusesWhatItCannotHold() {
        assertThrows(Refusal.class, () -> Dose.ofUnits("-1"));
        assertThrows(Refusal.class, () -> Dose.ofUnits("0.0001"));
        assertThrows(Refusal.class, () -> Dose.ofUnits("1e300"));
        assertThrows(Refusal.class, () -> Dose.ofUnits("twelve"));
        assertThrows(Refusal.class, () -> Dose.ofUnits("1").minus(Dose.ofUnits("2")));
        assertThrows(Refusal.class, () -> Dose.of(new BigDecimal("10000000000000.001"), DoseUnit.UNITS));
    }

    @Test
    void namesBothAmountsWhenUnitsMeet() {
        UnitClash clash = assertThrows(UnitClash.class, () -> Dose.ofUnits("12").plus(Dose.of("12", DoseUnit.MCG)));
        assertEquals("12 units", clash.left().toString());
        assertEquals("12 mcg", clash.right().toString());
        assertThrows(UnitClash.class, () -> Dose.ofUnits("12").compareTo(Dose.of("12", DoseUnit.MG)));
    }

    @Test
    void roundsOnlyWhenTold() {
        Dose step = Dose.ofUnits("12.5");
        assertEquals(
                "187.5 units",
                Dose.ofUnits("190").toMultipleOf(step, RoundingMode.FLOOR).toString());
        assertEquals(
                "200 units",
                Dose.ofUnits("190").toMultipleOf(step, RoundingMode.CEILING).toString());
        assertTrue(Dose.ofUnits("187.5").isMultipleOf(step));
        assertFalse(Dose.ofUnits("190").isMultipleOf(step));
        assertThrows(Refusal.class, () -> step.isMultipleOf(Dose.ofUnits("0")));
    }

    @Test
    void parsesWhatItPrintsInAnyLocale() {
        Locale before = Locale.getDefault();
        SplittableRandom random = new SplittableRandom(7);
        try {
            for (Locale locale : new Locale[] {Locale.ROOT, Locale.forLanguageTag("ar-EG"), Locale.GERMANY}) {
                Locale.setDefault(locale);
                for (int each = 0; each < 2_000; each++) {
                    Dose dose = new Dose(random.nextLong(Dose.MOST_MILLI_UNITS + 1), DoseUnit.values()[each % 3]);
                    assertEquals(dose, Dose.parse(dose.toString()));
                }
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}

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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
        assertThrows(Refusal.class, () -> Dose.of(new BigDecimal("1e300"), DoseUnit.UNITS));
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
    void reachesFromZeroToItsMost() {
        assertTrue(Dose.ofUnits("0").isZero());
        assertEquals(new Dose(Dose.MOST_MILLI_UNITS, DoseUnit.UNITS), Dose.ofUnits("10000000000000"));
        assertThrows(Refusal.class, () -> new Dose(Dose.MOST_MILLI_UNITS + 1, DoseUnit.UNITS));
        assertThrows(Refusal.class, () -> new Dose(-1, DoseUnit.UNITS));
    }

    /** An exponent, another script's digits or a leading zero is how ten times a dose is read. */
    @ParameterizedTest
    @ValueSource(strings = {"1e3", "1E-1", "\u0661\u0662", "\uff11", "+5", "010", "5.", ".5", "", " 5", "5,5"})
    void readsNothingButPlainDigits(String number) {
        Refusal refusal = assertThrows(Refusal.class, () -> Dose.ofUnits(number));
        assertEquals("\"" + number + "\" is not a number", refusal.getMessage());
        assertEquals("write digits, for example 187.5", refusal.mend());
    }

    @Test
    void saysWhatIsWrongWithAnAmount() {
        assertEquals("an amount cannot be below zero", refusalOf("-0.5 units"));
        assertEquals("\"187.5\" has no unit", refusalOf("187.5"));
        assertEquals("\"187.5 IU\" has no known unit", refusalOf("187.5 IU"));
        assertEquals("\"\" is not a number", refusalOf(" units"));
    }

    private static String refusalOf(String text) {
        return assertThrows(Refusal.class, () -> Dose.parse(text)).getMessage();
    }

    @Test
    void ordersAmountsOfOneUnit() {
        Dose small = Dose.ofUnits("37.5");
        Dose large = Dose.ofUnits("150");
        assertTrue(small.isLessThan(large));
        assertFalse(small.isLessThan(small));
        assertTrue(large.isMoreThan(small));
        assertFalse(large.isMoreThan(large));
        assertEquals(small, small.min(large));
        assertEquals(small, large.min(small));
        assertEquals(large, small.max(large));
        assertEquals(large, large.max(small));
    }

    @Test
    void staysInItsUnit() {
        assertEquals(Dose.ofUnits("150"), Dose.ofUnits("150").in(DoseUnit.UNITS));
        assertEquals(Dose.parse("0.001 mg"), Dose.parse("0.001 mg").in(DoseUnit.MG));
    }

    @Test
    void writesWholeNumbersWithoutAnExponent() {
        assertEquals(new BigDecimal("1000"), Dose.ofUnits("1000").number());
        assertEquals(new BigDecimal("0.25"), Dose.parse("0.250 mg").number());
        assertEquals(new BigDecimal("0"), Dose.ofUnits("0.000").number());
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

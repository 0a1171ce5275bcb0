package cyclepacket.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.VialSketch;
import cyclepacket.plan.Syringe;
import cyclepacket.quantity.Volume;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Graduation and tolerance of empty syringes. Nothing of it is ever printed: accuracy is a matter of the device.
 *
 * <p>Sources: ISO 8537:2007, syringes for insulin, as extracted in GOST ISO 8537-2011 (read; the 2016 edition may
 * differ): at 100 to the millilitre a 0.5 mL scale has a line each 0.01 mL and a 1 mL scale each 0.01 or 0.02 mL;
 * tolerance 1 % of nominal plus 2 % of the expelled volume below half capacity, 5 % of the expelled volume from half up.
 * ISO 7886-1:2017, other syringes; numbers from memory: 1.5 % of nominal plus 2 % below half, from half 5 % under 5 mL
 * and 4 % from 5 mL.
 */
class SyringeToleranceTest {
    @ParameterizedTest
    @CsvSource({"1, 0.25, 0.015", "1, 0.5, 0.025", "1, 1, 0.05", "0.5, 0.1, 0.007"})
    void followsTheInsulinSyringeStandard(String nominal, String expelled, String tolerance) {
        assertSame(tolerance, tolerance(nominal, expelled, "0.01", "0.05"));
    }

    @ParameterizedTest
    @CsvSource({"3, 1, 0.065", "3, 1.5, 0.075", "5, 2.5, 0.1", "1, 0.25, 0.02"})
    void followsTheOtherSyringeStandard(String nominal, String expelled, String tolerance) {
        String upper = new BigDecimal(nominal).compareTo(new BigDecimal(5)) < 0 ? "0.05" : "0.04";
        assertSame(tolerance, tolerance(nominal, expelled, "0.015", upper));
    }

    /** The demo's small syringes have the lines of the standard. */
    @Test
    void givesTheSmallSyringesTheStandardsLines() {
        for (String id : new String[] {"marks-100", "marks-50"}) {
            Syringe syringe = VialSketch.syringe(id);
            assertEquals(Volume.parse("0.01 mL"), syringe.graduation());
        }
        assertEquals(100, VialSketch.syringe("marks-100").lines());
        assertEquals(50, VialSketch.syringe("marks-50").lines());
    }

    /** A line is finer than what a syringe may be wrong by at half its capacity, so nothing is gained between two lines. */
    @Test
    void hasNoLineCoarserThanTheTolerance() {
        for (String id : new String[] {"marks-100", "marks-50"}) {
            Syringe syringe = VialSketch.syringe(id);
            BigDecimal half = syringe.capacity().millilitres().divide(BigDecimal.valueOf(2));
            BigDecimal may = half.multiply(new BigDecimal("0.05"));
            assertTrue(syringe.graduation().millilitres().compareTo(may) <= 0, id);
        }
    }

    private static BigDecimal tolerance(String nominal, String expelled, String ofNominal, String upper) {
        BigDecimal whole = new BigDecimal(nominal);
        BigDecimal out = new BigDecimal(expelled);
        boolean isUpper = out.add(out).compareTo(whole) >= 0;
        return isUpper
                ? out.multiply(new BigDecimal(upper))
                : whole.multiply(new BigDecimal(ofNominal)).add(out.multiply(new BigDecimal("0.02")));
    }

    private static void assertSame(String expected, BigDecimal actual) {
        assertEquals(0, new BigDecimal(expected).compareTo(actual), actual.toPlainString());
    }
}

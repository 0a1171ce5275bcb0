package cyclepacket.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Chances and means are exact fractions; nothing is rounded until it is asked for. */
class RatioTest {
    @Test
    void countsInLowestTerms() {
        assertEquals("4/7", Ratio.of(8, 14).toString());
        assertEquals(Ratio.of(5, 6), Ratio.of(1, 2).plus(Ratio.of(1, 3)));
        assertEquals(Ratio.of(1, 2), Ratio.of(2, 3).times(Ratio.of(3, 4)));
        assertEquals(Ratio.of(1, 2), Ratio.of(1, 6).times(3));
        assertEquals("0/1", Ratio.of(0, 9).toString());
        assertTrue(Ratio.of(0, 9).isZero());
        assertFalse(Ratio.of(1, 9).isZero());
    }

    @Test
    void ordersFractions() {
        assertTrue(Ratio.of(1, 3).compareTo(Ratio.of(1, 2)) < 0);
        assertTrue(Ratio.of(1, 2).compareTo(Ratio.of(1, 3)) > 0);
        assertEquals(0, Ratio.of(2, 4).compareTo(Ratio.of(1, 2)));
    }

    @Test
    void roundsAsItIsTold() {
        assertEquals("3", Ratio.of(5, 2).rounded(0, RoundingMode.HALF_UP).toPlainString());
        assertEquals("2.5", Ratio.of(5, 2).rounded(1, RoundingMode.UNNECESSARY).toPlainString());
    }

    @Test
    void refusesWhatIsNoFraction() {
        assertThrows(IllegalArgumentException.class, () -> Ratio.of(1, 0));
        assertThrows(IllegalArgumentException.class, () -> Ratio.of(-1, 2));
        assertThrows(IllegalArgumentException.class, () -> new Ratio(BigInteger.ONE, BigInteger.ONE.negate()));
    }

    @Test
    void addsOddsUp() {
        LengthOdds odds = new LengthOdds(Map.of(8, 10, 9, 30, 10, 60), true);
        assertEquals(Ratio.of(3, 10), odds.of(9));
        assertEquals(Ratio.ZERO, odds.of(11));
        assertEquals(Ratio.of(9, 10), odds.atLeast(9));
        assertEquals(Ratio.of(1, 1), odds.atLeast(8));
        assertEquals(Ratio.ZERO, odds.atLeast(11));
        assertThrows(IllegalArgumentException.class, () -> new LengthOdds(Map.of(8, 0), true));
    }
}

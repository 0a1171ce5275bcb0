package cyclepacket.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class DoseRangeTest {
    private static final DoseRange OWED = new DoseRange(Dose.ofUnits("30"), Dose.ofUnits("150"));

    @Test
    void holdsBothItsEnds() {
        assertTrue(OWED.contains(Dose.ofUnits("30")));
        assertTrue(OWED.contains(Dose.ofUnits("150")));
        assertFalse(OWED.contains(Dose.ofUnits("29.999")));
        assertFalse(OWED.contains(Dose.ofUnits("150.001")));
    }

    @Test
    void isExactWhenItsEndsMeet() {
        DoseRange one = DoseRange.exactly(Dose.ofUnits("87.5"));
        assertTrue(one.isExact());
        assertEquals("87.5 units", one.toString());
        assertFalse(OWED.isExact());
        assertEquals("30 to 150 units", OWED.toString());
    }

    @Test
    void refusesEndsInTheWrongOrder() {
        assertThrows(Refusal.class, () -> new DoseRange(Dose.ofUnits("150"), Dose.ofUnits("30")));
    }
}

package cyclepacket.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.PlanSketch;
import cyclepacket.plan.Dial;
import cyclepacket.plan.HouseRules.BetweenMarks;
import cyclepacket.plan.HouseRules.SmallRemainder;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Refusal;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Marks of a dial from 12.5 to 400 in steps of 12.5: print shows only these, by the clinic's rule. */
class MarksTest {
    private static final Dial DIAL = new Dial(units("12.5"), units("12.5"), units("400"));

    private static Dose units(String amount) {
        return PlanSketch.units(amount);
    }

    private static Marks marks(BetweenMarks between, String below, SmallRemainder.Do rule) {
        PlanSketch sketch = new PlanSketch();
        sketch.between = between;
        sketch.small = new SmallRemainder(new BigDecimal(below), rule);
        return new Marks(DIAL, sketch.clinic().rules());
    }

    private static Marks marks(BetweenMarks between) {
        return marks(between, "0", SmallRemainder.Do.CALL);
    }

    private static Owed owed(String least, String most) {
        return new Owed(units(least), units(most), false);
    }

    @ParameterizedTest
    @CsvSource({
        "UP, 30, 150, 37.5 to 150 units",
        "UP, 30, 155, 37.5 to 162.5 units",
        "CALL, 30, 155, 37.5 to 150 units",
        "NEAREST, 30, 155, 25 to 150 units",
        "NEAREST, 31.25, 156.25, 37.5 to 162.5 units",
        "UP, 395, 405, 400 units",
        "UP, 0, 12.5, 12.5 units"
    })
    void printsWhatTheHouseRuleSays(BetweenMarks between, String least, String most, String printed) {
        assertEquals(
                printed, marks(between).printed(owed(least, most)).orElseThrow().toString());
    }

    /** A range that starts just above zero reaches the first mark, whichever way it is rounded. */
    @ParameterizedTest
    @CsvSource({"UP", "CALL", "NEAREST"})
    void startsAboveZeroAtTheFirstMark(BetweenMarks between) {
        Owed owed = new Owed(units("0"), units("25"), true);
        assertEquals(
                "12.5 to 25 units", marks(between).printed(owed).orElseThrow().toString());
    }

    @Test
    void printsNothingWhereNoMarkLies() {
        assertEquals(Optional.empty(), marks(BetweenMarks.CALL).printed(owed("26", "30")));
        assertEquals(
                Optional.empty(),
                marks(BetweenMarks.UP, "20", SmallRemainder.Do.CALL).printed(owed("1", "5")));
    }

    /** A remainder below the clinic's number is never printed as one to dial, unless the clinic lets it be given. */
    @ParameterizedTest
    @CsvSource({
        "CALL, 0, 12.5",
        "CALL, 12.5, 12.5",
        "CALL, 20, 25",
        "SKIP, 25, 25",
        "SKIP, 25.0001, 37.5",
        "GIVE, 20, 12.5"
    })
    void keepsSmallRemaindersFromThePage(SmallRemainder.Do rule, String below, String smallest) {
        assertEquals(units(smallest), marks(BetweenMarks.UP, below, rule).smallest());
    }

    @Test
    void startsAtTheDialsLeastWhereTheClinicWroteNoNumberForTheUnit() {
        PlanSketch sketch = new PlanSketch();
        sketch.small = new SmallRemainder(Map.of(), SmallRemainder.Do.CALL);
        assertEquals(units("12.5"), new Marks(DIAL, sketch.clinic().rules()).smallest());
    }

    @Test
    void listsEveryMark() {
        assertEquals(
                "[37.5 units, 50 units, 62.5 units]",
                marks(BetweenMarks.UP).each(owed("30", "60")).toString());
        assertEquals("[]", marks(BetweenMarks.CALL).each(owed("26", "30")).toString());
    }

    @Test
    void knowsARemainderTooSmallToPrint() {
        Marks marks = marks(BetweenMarks.UP, "25", SmallRemainder.Do.CALL);
        assertTrue(marks.hasSmall(owed("24.999", "150")));
        assertFalse(marks.hasSmall(owed("25", "150")));
    }

    @Test
    void owesFromJustAboveZeroOrFromItsLeast() {
        Owed above = new Owed(units("0"), units("25"), true);
        assertFalse(above.contains(units("0")));
        assertTrue(above.contains(units("0.001")));
        assertTrue(above.contains(units("25")));
        assertFalse(above.contains(units("25.001")));
        Owed closed = owed("12.5", "25");
        assertTrue(closed.contains(units("12.5")));
        assertFalse(closed.contains(units("12.499")));
        assertFalse(closed.isExact());
        assertTrue(owed("25", "25").isExact());
    }

    @Test
    void refusesARangeThatIsNone() {
        assertThrows(Refusal.class, () -> owed("25", "12.5"));
        assertThrows(Refusal.class, () -> new Owed(units("12.5"), units("25"), true));
    }
}

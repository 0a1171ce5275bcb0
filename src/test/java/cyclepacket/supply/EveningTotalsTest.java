package cyclepacket.supply;

import static cyclepacket.DrawSketch.FIRST;
import static cyclepacket.DrawSketch.draw;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import cyclepacket.PlanSketch;
import cyclepacket.VialSketch;
import cyclepacket.ledger.Draw;
import cyclepacket.plan.HouseRules.InUseDayOne;
import cyclepacket.plan.Medicine;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Settings of 100 and 50 on the first evening, 100 on the second, and 100 on the fourth after 30 were lost. */
class EveningTotalsTest {
    private static final List<Draw> DRAWS =
            List.of(draw(1, 1, 0, 100), draw(1, 2, 100, 150), draw(2, 1, 150, 250), draw(4, 1, 280, 380));

    /** A pen whose cartridges last two days. */
    private static EveningTotals totals(InUseDayOne dayOne) {
        PlanSketch sketch = new PlanSketch().size("300", "300", "300");
        sketch.openedDays = 2;
        return new EveningTotals(sketch.medicine(), dayOne, DRAWS);
    }

    private static EveningTotals totals() {
        return totals(InUseDayOne.FIRST_USE);
    }

    @Test
    void findsTheEveningThatATotalRunsDryOn() {
        assertEquals(380_000, totals().goal());
        assertEquals(0, totals().evening(0));
        assertEquals(0, totals().evening(149_999));
        assertEquals(1, totals().evening(150_000));
        assertEquals(2, totals().evening(250_000));
        assertEquals(FIRST, totals().firstShort(149_999));
        assertEquals(FIRST.plusDays(3), totals().firstShort(250_000));
    }

    /** An evening counts as covered only with all of its settings. */
    @Test
    void coversWholeEvenings() {
        assertNull(totals().lastCovered(0));
        assertNull(totals().lastCovered(100_000));
        assertEquals(FIRST, totals().lastCovered(150_000));
        assertEquals(FIRST.plusDays(1), totals().lastCovered(279_999));
        assertEquals(FIRST.plusDays(3), totals().lastCovered(380_000));
    }

    /** A thousandth short of the first evening's 100 is short of that evening, and an evening without a dose is not the one. */
    @Test
    void tellsTheFirstEveningFromOneWithoutADose() {
        Medicine pen = new PlanSketch().size("300", "300", "300").medicine();
        EveningTotals two =
                new EveningTotals(pen, InUseDayOne.FIRST_USE, List.of(draw(1, 1, 0, 100), draw(2, 1, 100, 200)));
        assertEquals(FIRST, two.firstShort(99_999));
        assertEquals(FIRST, two.lastCovered(100_000));
        EveningTotals held = new EveningTotals(
                pen, InUseDayOne.FIRST_USE, List.of(draw(1, 1, 0, 100), draw(2, 1, 100, 100), draw(3, 1, 100, 200)));
        assertEquals(FIRST, held.firstShort(99_999));
        assertEquals(FIRST.plusDays(2), held.firstShort(100_000));
    }

    /** Opened on the first evening it may be used on the second, and is left before the fourth, at 280. */
    @Test
    void reachesNoFurtherThanItsDays() {
        assertEquals(100_000, totals().reach(0, 100_000));
        assertEquals(280_000, totals().reach(0, 900_000));
        assertEquals(280_000, totals().reach(150_000, 900_000));
        assertEquals(1_150_000, totals(InUseDayOne.DAY_AFTER).reach(150_000, 1_000_000));
        assertEquals(1_150_000, totals().reach(250_000, 900_000));
    }

    /** Opened on the day before, it is left before the second evening; one that is too old gives nothing more. */
    @Test
    void countsTheDaysOfAContainerThatWasOpenBefore() {
        LocalDate opened = FIRST.minusDays(1);
        assertEquals(150_000, totals().reach(0, 900_000, opened));
        assertEquals(200_000, totals().reach(200_000, 50_000, opened));
        assertEquals(280_000, totals(InUseDayOne.DAY_AFTER).reach(0, 900_000, opened));
    }

    @Test
    void knowsNoEveningsOfVialsAndNoGoalWithoutDoses() {
        Medicine vial = VialSketch.menotropin();
        EveningTotals vials = new EveningTotals(vial, InUseDayOne.FIRST_USE, DRAWS);
        assertEquals(EveningTotals.NONE, vials.evening(150_000));
        assertEquals(900_000, vials.reach(0, 900_000));
        assertEquals(0, new EveningTotals(vial, InUseDayOne.FIRST_USE, List.of()).goal());
    }

    @Test
    void countsBoxesAsTheyAreSold() {
        assertEquals(Optional.of(2), needles(13, Optional.of(10)).boxes());
        assertEquals(Optional.of(1), needles(10, Optional.of(10)).boxes());
        assertEquals(Optional.of(1), needles(1, Optional.of(10)).boxes());
        assertEquals(Optional.empty(), needles(13, Optional.empty()).boxes());
        assertEquals("pen-needle", SupplyItem.Kind.PEN_NEEDLE.key());
    }

    private static SupplyItem needles(int count, Optional<Integer> boxOf) {
        return new SupplyItem(SupplyItem.Kind.PEN_NEEDLE, count, boxOf, Optional.empty());
    }
}

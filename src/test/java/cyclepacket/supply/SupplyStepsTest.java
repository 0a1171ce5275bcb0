package cyclepacket.supply;

import static cyclepacket.supply.SupplySketch.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.PlanSketch;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.Plan;
import cyclepacket.plan.SupplyRules;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What to order at once and later, how long the course may take, and the sharps container; worked by hand. */
class SupplyStepsTest {
    /** Ten evenings of 100 at the most, from 5 March 2027. */
    private static SupplySketch sketch() {
        SupplySketch sketch = new SupplySketch().size("900", "990").size("300", "330");
        sketch.plan.days = 10;
        sketch.plan.dose(1, "100");
        return sketch;
    }

    private static void retrieve(SupplySketch sketch, int day) {
        sketch.plan.retrieval = Optional.of(LocalDateTime.of(2027, 3, day, 8, 30));
    }

    private static void callTrigger(SupplySketch sketch) {
        sketch.plan.called.add(new Plan.Call(
                Anchor.T,
                new Plan.Moment(
                        LocalDate.of(2027, 3, 15),
                        Optional.of(LocalDateTime.of(2027, 3, 15, 20, 30).toLocalTime()),
                        Optional.empty()),
                Optional.of("ORD-1"),
                "invented nurse",
                "the patient",
                LocalDate.of(2027, 3, 13),
                true));
    }

    /** Retrieval on the 17th: the trigger is on the 15th, the last dose on the 14th, and 1,000 units are 900 and 300. */
    @Test
    void ordersEverythingAtOnceWhereTheLengthIsKnown() {
        SupplySketch sketch = sketch();
        retrieve(sketch, 17);
        callTrigger(sketch);
        SupplyLine line = sketch.line();
        assertEquals("1x900 + 1x300", text(line.toOrderNow().orElseThrow()));
        assertEquals(List.of(), line.toOrderLater());
        assertTrue(line.isToBuy());
        assertEquals(PlanSketch.units("1000"), line.shortAtMost());
    }

    @Test
    void ordersNothingWhereEnoughIsAtHome() {
        SupplySketch sketch = sketch();
        retrieve(sketch, 17);
        sketch.plan.home("900", "300");
        assertEquals(Optional.empty(), sketch.line().toOrderNow());
        assertFalse(sketch.line().isToBuy());
    }

    /** Eight evenings take 800 and fourteen 1,400; while nobody knows, the cheapest way is bought in steps. */
    @Test
    void ordersTheFirstStepOfTheCheapestWay() {
        SupplySketch sketch = sketch().atTheDoor().odds(Map.of(8, 90, 14, 10));
        sketch.plan.days = 14;
        SupplyLine line = sketch.line();
        BuyChoice best = line.choices().orElseThrow().best().orElseThrow();
        assertEquals(best.now(), line.toOrderNow().orElseThrow());
        assertEquals(best.later(), line.toOrderLater());
    }

    /** S10 is the 14th. A trigger that was called, or is planned later than the day after it, decides instead. */
    @Test
    void countsTheLongestCourseUntilTheTriggerIsCalled() {
        SupplySketch sketch = sketch();
        assertEquals(Optional.of(LocalDate.of(2027, 3, 14)), sketch.supply().longestUntil());
        retrieve(sketch, 17);
        assertEquals(Optional.of(LocalDate.of(2027, 3, 14)), sketch.supply().longestUntil());
        callTrigger(sketch);
        assertEquals(Optional.empty(), sketch.supply().longestUntil());
        sketch.plan.called.clear();
        retrieve(sketch, 18);
        assertEquals(Optional.empty(), sketch.supply().longestUntil());
    }

    private static String sharps(SupplyRules.SharpsContainer... sold) {
        SupplySketch sketch = sketch();
        sketch.rules = new SupplyRules(Map.of(), Map.of(), 0, List.of(sold));
        List<SupplyItem> items = sketch.supply().items();
        SupplyItem sharps = items.get(items.size() - 1);
        return sharps.count() + " " + sharps.size().orElse("");
    }

    /** Ten injections, the second cartridge on the tenth evening, and two spare needles are thirteen. */
    @Test
    void takesTheSmallestContainerThatHoldsEveryNeedle() {
        SupplyRules.SharpsContainer twelve = new SupplyRules.SharpsContainer("small", 12);
        SupplyRules.SharpsContainer thirteen = new SupplyRules.SharpsContainer("large", 13);
        assertEquals("1 large", sharps(twelve, thirteen));
        assertEquals("2 small", sharps(twelve));
        assertEquals("3 tiny", sharps(new SupplyRules.SharpsContainer("tiny", 5)));
        assertEquals("1 ", sharps());
    }
}

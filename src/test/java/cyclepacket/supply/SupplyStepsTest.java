package cyclepacket.supply;

import static cyclepacket.supply.SupplySketch.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.PlanSketch;
import cyclepacket.course.Course;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.DayMark;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol;
import cyclepacket.plan.SupplyRules;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
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
        SupplyRules.SharpsContainer forty = new SupplyRules.SharpsContainer("huge", 40);
        assertEquals("1 large", sharps(twelve, thirteen));
        assertEquals("1 large", sharps(twelve, thirteen, forty));
        assertEquals("2 small", sharps(twelve));
        assertEquals("3 tiny", sharps(new SupplyRules.SharpsContainer("tiny", 5)));
        assertEquals("1 ", sharps());
    }

    /** 900 at home, 100 given on the first evening: 800 are left, and 100 more are missing for ten evenings. */
    @Test
    void countsWhatIsLeftAtHomeAndWhatIsMissingAtEachLength() {
        SupplySketch sketch = sketch();
        sketch.plan.days = 14;
        sketch.plan.home("900").happened(1, "100", "0");
        SupplyLine line = sketch.line();
        assertEquals(PlanSketch.units("800"), line.onHandLeast());
        // One evening at the least, as the sketch has it; it is over.
        assertEquals(
                List.of(
                        "1: 0 units, short 0 units",
                        "10: 900 units, short 100 units",
                        "14: 1300 units, short 500 units"),
                line.lengths().stream()
                        .map(cover -> cover.days() + ": " + cover.needed() + ", short "
                                + cover.covered().shortAtMost())
                        .toList());
    }

    /** Ten evenings of 90 empty one cartridge of 900 to the last unit: no second one is loaded. */
    @Test
    void countsNoNeedleForACartridgeThatEndsWithTheCourse() {
        SupplySketch sketch = sketch();
        sketch.plan.least = "10";
        sketch.plan.step = "10";
        sketch.plan.doses.clear();
        sketch.plan.dose(1, "90").home("900");
        assertEquals(12, sketch.line().needles());
    }

    /** One evening, given; the trigger is called for the next. */
    @Test
    void needsNothingMoreOnceAllIsGiven() {
        SupplySketch sketch = sketch();
        sketch.plan.days = 1;
        sketch.plan.home("300").happened(1, "100", "0");
        retrieve(sketch, 8);
        sketch.plan.called.add(new Plan.Call(
                Anchor.T,
                new Plan.Moment(LocalDate.of(2027, 3, 6), Optional.of(LocalTime.of(20, 30)), Optional.empty()),
                Optional.of("ORD-1"),
                "invented nurse",
                "the patient",
                LocalDate.of(2027, 3, 6),
                true));
        SupplyLine line = sketch.line();
        assertEquals(PlanSketch.units("0"), line.needed());
        assertEquals(PlanSketch.units("200"), line.onHandLeast());
        assertEquals(0, line.needles());
        assertEquals(List.of(), sketch.supply().items());
    }

    /** The same medicine once at the start and once with the trigger; the first is given and the second has no day yet. */
    @Test
    void countsADoseOnTheDayOfTheTrigger() {
        SupplySketch sketch = sketch().size("100", "110");
        sketch.plan.happened(1, "100", "0").home("100");
        PlanFiles files = sketch.files();
        Protocol.Row start =
                new Protocol.Row(PlanSketch.PEN, DayMark.parse("S1"), DayMark.parse("S1"), "evening", Optional.empty());
        Protocol.Row last =
                new Protocol.Row(PlanSketch.PEN, DayMark.parse("T"), DayMark.parse("T"), "exact", Optional.empty());
        Protocol protocol = files.protocol();
        PlanFiles twice = new PlanFiles(
                files.plan(),
                files.clinic(),
                new Protocol(
                        protocol.id(),
                        protocol.title(),
                        protocol.anchors(),
                        protocol.triggerBefore(),
                        protocol.stimulationDays().orElseThrow(),
                        List.of(start, last),
                        List.of()),
                files.medicines(),
                files.planFile(),
                files.clinicFile(),
                files.protocolFile(),
                files.medicineFiles());
        SupplyLine line = SupplyPlan.of(twice, CycleLedger.of(twice, Course.of(twice)))
                .of(PlanSketch.PEN)
                .orElseThrow();
        assertEquals(1, line.undated());
        assertEquals(PlanSketch.units("100"), line.needed());
        // The packet is of the second day, and the trigger can be that evening.
        assertEquals(Optional.of(LocalDate.of(2027, 3, 6)), line.firstShort());
        assertEquals(List.of(), line.lengths());
    }
}

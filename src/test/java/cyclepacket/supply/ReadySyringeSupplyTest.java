package cyclepacket.supply;

import static cyclepacket.supply.SupplySketch.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.plan.Device;
import cyclepacket.plan.SupplyRules;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Syringes that are used whole: which sizes are missing, counted on the fingers. */
class ReadySyringeSupplyTest {
    /** Four evenings of 100, 100, 150 and 150; syringes of 100 cost 10.00, of 150 14.00. */
    private static SupplySketch twoSizes() {
        SupplySketch sketch = new SupplySketch().size("100", "10").size("150", "14");
        sketch.plan.other = Optional.of(new Device.ReadySyringe());
        sketch.plan.days = 4;
        sketch.plan.dose(1, "100").dose(3, "150");
        return sketch;
    }

    private static String toBuy(SupplySketch sketch) {
        return text(sketch.line().purchase().chosen().orElseThrow());
    }

    private static List<String> doubts(SupplySketch sketch) {
        return sketch.line().purchase().doubts().stream()
                .map(doubt -> doubt.kind() + " " + doubt.subject())
                .toList();
    }

    @Test
    void buysOneOfEachDoseThatIsNotAtHome() {
        assertEquals("2x150 + 2x100", toBuy(twoSizes()));
        SupplySketch sketch = twoSizes();
        sketch.plan.home("100", "150");
        Purchase purchase = sketch.line().purchase();
        assertEquals("1x150 + 1x100", text(purchase.chosen().orElseThrow()));
        assertEquals(2_400, purchase.chosen().orElseThrow().cost().orElseThrow().hundredths());
        assertTrue(purchase.isPriced());
        assertEquals(Optional.empty(), purchase.calmest());
        assertEquals(List.of(), purchase.doubts());
    }

    /** The first evening's syringe is used: of 100, 100 and 150 at home, one of each is left, and one 150 is missing. */
    @Test
    void takesWhatWasGivenFromWhatWasAtHome() {
        SupplySketch sketch = twoSizes();
        sketch.plan.home("100", "100", "150").happened(1, "100");
        assertEquals("1x150", toBuy(sketch));
    }

    /** Somebody lent the first one: 100, 150 and 150 are to come, and one of 150 is at home. */
    @Test
    void buysNothingForAnEveningThatIsOver() {
        SupplySketch sketch = twoSizes();
        sketch.plan.home("150").happened(1, "100");
        assertEquals("1x150 + 1x100", toBuy(sketch));
    }

    @Test
    void buysNothingForAnEveningWithoutADose() {
        SupplySketch sketch = twoSizes();
        sketch.plan.dose(2, "0");
        assertEquals("2x150 + 1x100", toBuy(sketch));
        assertEquals(List.of(), doubts(sketch));
    }

    @Test
    void saysWhichDoseNoSyringeHas() {
        SupplySketch sketch = twoSizes();
        sketch.plan.dose(4, "120");
        assertEquals("1x150 + 2x100", toBuy(sketch));
        assertEquals(List.of("NO_SIZE 120 units"), doubts(sketch));
    }

    @Test
    void buysNothingWhereNoDoseHasASyringe() {
        SupplySketch sketch = twoSizes();
        sketch.plan.doses.clear();
        sketch.plan.dose(1, "120").dose(3, "130");
        assertEquals(Optional.empty(), sketch.line().purchase().chosen());
        assertEquals(
                List.of("NO_SIZE 120 units", "NO_SIZE 120 units", "NO_SIZE 130 units", "NO_SIZE 130 units"),
                doubts(sketch));
    }

    /** Where every dose is the same, syringes are counted by their sum, and no other size will do however cheap. */
    @Test
    void buysTheSizeOfTheDose() {
        SupplySketch sketch =
                new SupplySketch().size("100", "10").size("150", "1").size("200", "1");
        sketch.plan.other = Optional.of(new Device.ReadySyringe());
        sketch.plan.days = 4;
        sketch.plan.dose(1, "100").home("100");
        assertEquals("3x100", toBuy(sketch));
        assertEquals(
                "3000",
                ""
                        + sketch.line()
                                .purchase()
                                .chosen()
                                .orElseThrow()
                                .cost()
                                .orElseThrow()
                                .hundredths());
        // While the length is unknown, steps are weighed: that takes a sum, so one size alone.
        assertTrue(sketch.line().choices().isPresent());
        assertTrue(twoSizes().line().choices().isEmpty());
    }

    /** 100 was given on the first evening; what is to come is 150 alone, and its length is unknown. */
    @Test
    void forgetsTheSizesOfEveningsThatAreOver() {
        SupplySketch sketch = twoSizes();
        sketch.plan.dose(2, "150").home("100").happened(1, "100");
        assertTrue(sketch.line().choices().isPresent());
        assertEquals("3x150", toBuy(sketch));
    }

    /** Four syringes and no pen needle: a container for three is too small. */
    @Test
    void throwsEverySyringeAway() {
        SupplySketch sketch = twoSizes();
        sketch.rules = new SupplyRules(
                Map.of(),
                Map.of(),
                0,
                List.of(new SupplyRules.SharpsContainer("small", 3), new SupplyRules.SharpsContainer("large", 4)));
        assertEquals(0, sketch.line().needles());
        List<SupplyItem> items = sketch.supply().items();
        assertEquals(
                List.of("alcohol swab 8", "sharps container 1"),
                items.stream()
                        .map(item -> item.kind().word() + " " + item.count())
                        .toList());
        assertEquals(Optional.of("large"), items.get(1).size());
    }
}

package cyclepacket.supply;

import static cyclepacket.supply.SupplySketch.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.plan.HouseRules;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Orders that a careful navigator works out by hand; common practice and own arithmetic, no published source. */
class WorkedSupplyTest {
    private static final Map<Integer, Integer> ODDS = Map.of(8, 10, 9, 20, 10, 25, 11, 20, 12, 15, 13, 7, 14, 3);

    /** Ten evenings of 275 from cartridges of 900: new ones on evenings 4, 7 and 10, and two spare needles. */
    @Test
    void countsTheNeedlesOfTenEvenings() {
        SupplySketch sketch = new SupplySketch().unpriced("900");
        sketch.plan.days = 10;
        sketch.plan.dose(1, "275").home("900", "900", "900", "900");
        assertEquals(15, sketch.line().needles());
    }

    /** Nine evenings of 525, each in two settings: 18, five new cartridges within 4,725 units, and two spares. */
    @Test
    void countsTheNeedlesOfNineDividedEvenings() {
        SupplySketch sketch = new SupplySketch().unpriced("900");
        sketch.plan.days = 9;
        sketch.plan.split = HouseRules.SplitDose.FULL_DIAL_FIRST;
        sketch.plan.dose(1, "525").home("900", "900", "900", "900", "900", "900");
        assertEquals(25, sketch.line().needles());
    }

    /** The same number when the cartridges are still to be bought. */
    @Test
    void countsTheNeedlesOfWhatIsStillToBeBought() {
        SupplySketch sketch = new SupplySketch().unpriced("900");
        sketch.plan.days = 10;
        sketch.plan.dose(1, "275").home("900");
        assertEquals(15, sketch.line().needles());
    }

    /** From Tuesday 17 November 2026 with 1,800 units at home, 275 an evening. */
    private static SupplySketch november() {
        SupplySketch sketch = new SupplySketch().unpriced("900");
        sketch.plan.start = LocalDate.of(2026, 11, 17);
        sketch.plan.prepared = LocalDate.of(2026, 11, 16);
        sketch.plan.days = 12;
        sketch.plan.dose(1, "275").home("900", "900");
        return sketch;
    }

    @Test
    void findsTheLastHourBeforeAWeekend() {
        SupplyLine line = november().line();
        assertEquals(Optional.of(LocalDate.of(2026, 11, 22)), line.covered().surelyUntil());
        assertEquals(Optional.of(LocalDate.of(2026, 11, 23)), line.firstShort());
        assertEquals(
                "2026-11-19T14:00-05:00[America/New_York]",
                line.lastOrder().orElseThrow().toString());
    }

    @Test
    void takesTwoWorkingDaysForAuthorisation() {
        SupplySketch sketch = november();
        sketch.authorisation = 2;
        assertEquals(
                "2026-11-17T14:00-05:00[America/New_York]",
                sketch.line().lastOrder().orElseThrow().toString());
    }

    @Test
    void arrivesBeforeAHoliday() {
        SupplySketch sketch = november();
        sketch.closed = Set.of(LocalDate.of(2026, 11, 26));
        sketch.plan.home("900");
        SupplyLine line = sketch.line();
        assertEquals(Optional.of(LocalDate.of(2026, 11, 25)), line.covered().surelyUntil());
        assertEquals(
                "2026-11-24T14:00-05:00[America/New_York]",
                line.lastOrder().orElseThrow().toString());
    }

    private static SupplySketch twoSizesAtTheDoor() {
        return new SupplySketch()
                .size("900", "990")
                .size("300", "330")
                .atTheDoor()
                .odds(ODDS);
    }

    /**
     * 8 to 14 evenings at 200 with invented odds, 1.10 a unit, cartridges of 900 and 300. Evenings 10 to 14 are working
     * days, so that each order can wait for its own.
     */
    private static BuyChoices lengths() {
        SupplySketch sketch = twoSizesAtTheDoor();
        sketch.plan.start = LocalDate.of(2027, 3, 6);
        sketch.plan.days = 14;
        sketch.plan.dose(1, "200");
        return sketch.line().choices().orElseThrow();
    }

    private static BuyChoice buying(BuyChoices choices, String now) {
        return choices.all().stream()
                .filter(choice -> text(choice.now()).equals(now))
                .findFirst()
                .orElseThrow();
    }

    private static void assertChoice(String now, String refill, String units, String money) {
        BuyChoice choice = buying(lengths(), now);
        assertEquals(
                refill,
                choice.refillChance()
                        .times(100)
                        .rounded(0, RoundingMode.UNNECESSARY)
                        .toPlainString());
        Ratio waste = choice.waste().times(Ratio.of(1, 1000));
        assertEquals(units, waste.rounded(0, RoundingMode.UNNECESSARY).toPlainString());
        Ratio cost = choice.wasteCost().orElseThrow().times(Ratio.of(1, 100));
        assertEquals(money, cost.rounded(0, RoundingMode.HALF_UP).toPlainString());
    }

    @Test
    void weighsBuyingAllNowAgainstBuyingInSteps() {
        assertChoice("3x900 + 1x300", "0", "914", "1005");
        assertChoice("2x900 + 1x300", "45", "188", "207");
        assertChoice("2x900", "70", "98", "108");
        assertTrue(lengths().odds().isFromClinic());
    }

    /**
     * One evening takes 200, so 300; two and three 600, four 900, five and six 1,200, and so on to fourteen: 2,800, so
     * 3,000. Each way stands once, the largest first.
     */
    @Test
    void listsEachWayOnceAndTheLargestFirst() {
        assertEquals(
                List.of("3000", "2700", "2400", "2100", "1800", "1500", "1200", "900", "600", "300"),
                lengths().all().stream()
                        .map(choice -> choice.now().labelled().number().toPlainString())
                        .toList());
    }

    /** Fourteen evenings at 150 are 2,100, which lie at home: no length runs short. */
    @Test
    void hasNothingToChooseWhereTheLongestIsCovered() {
        SupplySketch sketch = twoSizesAtTheDoor();
        sketch.plan.days = 14;
        sketch.plan.dose(1, "150").home("900", "900", "300");
        assertTrue(sketch.line().choices().isEmpty());
    }

    /** 900 at home give four evenings of 200; the fifth is short, whatever length needs it, and four evenings need no more. */
    @Test
    void namesTheFirstShortEveningOfEachLength() {
        SupplySketch sketch = new SupplySketch().size("900", "990").odds(ODDS);
        sketch.plan.days = 14;
        sketch.plan.dose(1, "200").home("900");
        for (LengthCover length : sketch.line().lengths()) {
            assertEquals(
                    length.days() > 4 ? Optional.of(sketch.plan.night(5)) : Optional.empty(),
                    length.covered().firstShort(),
                    length.days() + " evenings");
        }
    }

    /** Of two sizes at one price the one that leaves less over. */
    @Test
    void leavesLessOverForTheSameMoney() {
        SupplySketch sketch = new SupplySketch().size("450", "330").size("300", "330");
        sketch.plan.days = 1;
        sketch.plan.dose(1, "300");
        assertEquals("1x300", text(sketch.line().purchase().chosen().orElseThrow()));
    }

    /** The last hour for a second order was Thursday 11 March, 14:00; on the 12th that way is no longer open. */
    @Test
    void knowsAWayWhoseOrderIsTooLate() {
        SupplySketch sketch = new SupplySketch().size("900", "990").size("300", "330");
        sketch.plan.days = 14;
        sketch.plan.dose(1, "200");
        assertTrue(buying(sketch.line().choices().orElseThrow(), "2x900").isInTime());
        sketch.plan.issue = 2;
        sketch.plan.prepared = LocalDate.of(2027, 3, 12);
        assertFalse(buying(sketch.line().choices().orElseThrow(), "2x900").isInTime());
    }

    /** Nothing is due on the twelfth evening, so eleven and twelve evenings need the same, 2,200. */
    @Test
    void comparesLengthsThatNeedTheSame() {
        SupplySketch sketch = twoSizesAtTheDoor();
        sketch.plan.days = 14;
        sketch.plan.dose(1, "200").dose(12, "0").dose(13, "200");
        assertEquals(
                List.of("2700", "2400", "2100", "1800", "1500", "1200", "900", "600", "300"),
                sketch.line().choices().orElseThrow().all().stream()
                        .map(choice -> choice.now().labelled().number().toPlainString())
                        .toList());
    }

    /** The day after the longest length, and with a trigger that has its day, no length is open any more. */
    @Test
    void knowsNoLengthsOnceTheyAreOver() {
        SupplySketch sketch = new SupplySketch().size("300", "330");
        sketch.plan.days = 14;
        sketch.plan.dose(1, "200").home("300");
        assertFalse(CourseOfLength.all(sketch.files()).isEmpty());
        sketch.plan.issue = 2;
        sketch.plan.prepared = sketch.plan.night(17);
        assertTrue(CourseOfLength.all(sketch.files()).isEmpty());
        sketch.plan.prepared = sketch.plan.night(2);
        sketch.plan.retrieval = Optional.of(sketch.plan.night(12).atTime(8, 30));
        assertTrue(CourseOfLength.all(sketch.files()).isEmpty());
    }

    @Test
    void choosesWhatCostsLeastOnAverage() {
        BuyChoices choices = lengths();
        BuyChoice best = choices.best().orElseThrow();
        assertTrue(choices.all().stream()
                .allMatch(choice ->
                        choice.cost().orElseThrow().compareTo(best.cost().orElseThrow()) >= 0));
    }

    /** Even odds, and a parcel that is two days on its way: each order is made before the length is known. */
    @Test
    void ordersWhatCannotWaitWhetherNeededOrNot() {
        SupplySketch sketch = new SupplySketch().size("900", "990").size("300", "330");
        sketch.plan.days = 14;
        sketch.plan.dose(1, "200");
        BuyChoices choices = sketch.line().choices().orElseThrow();
        assertFalse(choices.odds().isFromClinic());
        BuyChoice choice = buying(choices, "2x900");
        BuyChoice.Stage first = choice.later().get(0);
        // 1,800 last to Saturday 13 March; Sunday's dose must come on Friday, so Thursday 14:00 is the last hour.
        assertEquals(LocalDate.of(2027, 3, 14), first.firstShort());
        assertEquals(
                "2027-03-11T14:00-05:00[America/New_York]",
                first.lastOrder().orElseThrow().toString());
        assertEquals(10, first.days());
        assertEquals(7, first.orderedFromDays());
        assertEquals(Ratio.of(5, 14), first.chanceNeeded());
        assertEquals(Ratio.of(8, 14), first.chanceOrdered());
        // Evenings 10 to 12 have the same last hour; 13 can wait for Monday's.
        assertEquals("2x300", text(first.basket()));
        assertEquals(
                "2027-03-15T14:00-04:00[America/New_York]",
                choice.later().get(1).lastOrder().orElseThrow().toString());
        for (BuyChoice.Stage stage : choice.later()) {
            assertTrue(stage.chanceOrdered().compareTo(stage.chanceNeeded()) >= 0);
        }
    }

    @Test
    void forgetsLengthsThatAreOver() {
        SupplySketch sketch = new SupplySketch().size("300", "330").atTheDoor().odds(ODDS);
        sketch.plan.days = 14;
        sketch.plan.issue = 2;
        sketch.plan.prepared = sketch.plan.night(12);
        sketch.plan.dose(1, "200").home("300");
        BuyChoices choices = sketch.line().choices().orElseThrow();
        assertEquals(Set.of(11, 12, 13, 14), choices.odds().weights().keySet());
        assertEquals(Ratio.of(20, 45), choices.odds().of(11));
        assertEquals(Ratio.ZERO, choices.odds().of(10));
    }
}

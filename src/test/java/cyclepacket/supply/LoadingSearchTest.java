package cyclepacket.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.PlanSketch;
import cyclepacket.course.Course;
import cyclepacket.ledger.Container;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.ledger.Draw;
import cyclepacket.plan.HouseRules.InUseDayOne;
import cyclepacket.plan.PlanFiles;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Which container first: worked by hand, and against every order tried one by one. */
class LoadingSearchTest {
    private static final LocalDate SOON = LocalDate.of(2028, 1, 31);
    private static final LocalDate LATE = LocalDate.of(2028, 6, 30);

    private static SupplySketch sketch(int days, String dose) {
        SupplySketch sketch = new SupplySketch().unpriced("150").unpriced("300").unpriced("900");
        sketch.plan.days = days;
        sketch.plan.dose(1, dose);
        return sketch;
    }

    private static List<String> order(SupplyLine line) {
        return line.betterOrder().orElseThrow().order().stream()
                .map(container ->
                        container.number() + ":" + container.label().number().toPlainString())
                .toList();
    }

    /** 800 in sum: the 900 alone lasts; a 300 before it costs an evening. */
    @Test
    void savesANewCartridgeEvening() {
        SupplyLine line = sketch(8, "100").home("300", SOON).home("900", LATE).line();
        assertEquals(List.of("2:900", "1:300"), order(line));
        assertEquals(1, line.betterOrder().orElseThrow().fewerEvenings());
    }

    /** 1,000 in sum take two of 900, or a 900 and a 300: the same evenings, and 200 instead of 800 left over. */
    @Test
    void leavesLessOver() {
        SupplyLine line = sketch(10, "100")
                .home("900", SOON)
                .home("900", SOON)
                .home("300", LATE)
                .line();
        assertEquals(0, line.betterOrder().orElseThrow().fewerEvenings());
        assertEquals(600_000, line.betterOrder().orElseThrow().lessLeft());
        assertEquals(List.of("1:900", "3:300", "2:900"), order(line));
    }

    @Test
    void usesFirstWhatExpiresFirst() {
        SupplyLine line = sketch(10, "100").home("900", LATE).home("900", SOON).line();
        assertEquals(List.of("2:900", "1:900"), order(line));
        assertEquals(
                LoadingOrder.Gain.SOONER_EXPIRY,
                line.betterOrder().orElseThrow().gain());
        assertTrue(sketch(10, "100")
                .home("900", SOON)
                .home("900", LATE)
                .line()
                .betterOrder()
                .isEmpty());
    }

    /** The only cartridge, of 150 to 200, gave 200: it is empty, and there is nothing to load in another order. */
    @Test
    void hasNoAdviceWhereMoreIsDrawnThanIsAtHomeForSure() {
        SupplySketch sketch = new SupplySketch();
        sketch.plan.size("150", "150", "200").home("150").dose(1, "100");
        sketch.plan.happened(1, "100").happened(2, "100");
        assertTrue(sketch.line().betterOrder().isEmpty());
    }

    /** A part-used one goes first, although the fresh 900 alone would do. */
    @Test
    void beginsWithWhatIsPartUsed() {
        SupplySketch sketch = sketch(8, "100");
        sketch.home("900", LATE).partUsed("300", sketch.plan.start.minusDays(3), "200");
        assertEquals(List.of("2:300", "1:900"), order(sketch.line()));
        assertEquals(
                LoadingOrder.Gain.PART_USED_FIRST,
                sketch.line().betterOrder().orElseThrow().gain());
    }

    /** What is in the pen stays there; only the boxes after it are compared. */
    @Test
    void leavesTheCartridgeInThePen() {
        SupplySketch sketch =
                sketch(10, "100").home("300", LATE).home("150", LATE).home("900", SOON);
        sketch.plan.happened(1, "100", "0");
        assertEquals(List.of("3:900", "2:150"), order(sketch.line()));
    }

    @Test
    void isNeverBeatenByAnotherOrder() {
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            SupplySketch sketch = sketch(4 + random.nextInt(10), Integer.toString(25 * (1 + random.nextInt(8))));
            sketch.plan.openedDays = 4 + random.nextInt(25);
            int boxes = 2 + random.nextInt(4);
            for (int box = 0; box < boxes; box++) {
                sketch.home(List.of("150", "300", "900").get(random.nextInt(3)), random.nextBoolean() ? SOON : LATE);
            }
            PlanFiles files = sketch.files();
            Course course = Course.of(files);
            List<Draw> draws =
                    CycleLedger.settings(files, course, files.medicines().get(PlanSketch.PEN));
            EveningTotals totals =
                    new EveningTotals(files.medicines().get(PlanSketch.PEN), InUseDayOne.FIRST_USE, draws);
            LoadingSearch search = new LoadingSearch(totals, 0, EveningTotals.NONE, true);
            List<Container> all = Container.of(
                    files.medicines().get(PlanSketch.PEN), files.plan().onHand().get(PlanSketch.PEN));
            LoadingSearch.Row best = search.best(all).orElseThrow();
            for (List<Container> order : orders(all)) {
                LoadingSearch.Row other = search.inOrder(order);
                assertTrue(!other.isBetterThan(best), "seed " + seed + ": " + other + " beats " + best);
            }
        }
    }

    private static List<List<Container>> orders(List<Container> all) {
        if (all.isEmpty()) {
            return List.of(List.of());
        }
        List<List<Container>> orders = new ArrayList<>();
        for (int first = 0; first < all.size(); first++) {
            List<Container> rest = new ArrayList<>(all);
            Container own = rest.remove(first);
            for (List<Container> order : orders(rest)) {
                List<Container> whole = new ArrayList<>(List.of(own));
                whole.addAll(order);
                orders.add(whole);
            }
        }
        return orders;
    }
}

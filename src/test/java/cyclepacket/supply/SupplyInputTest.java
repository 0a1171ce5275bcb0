package cyclepacket.supply;

import static cyclepacket.supply.SupplySketch.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.plan.Device;
import cyclepacket.plan.SupplyRules;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Odd input ends in a plain word: no endless search, and no zero that stands for "unknown". */
class SupplyInputTest {
    private static SupplySketch sketch() {
        SupplySketch sketch = new SupplySketch();
        sketch.plan.days = 10;
        sketch.plan.dose(1, "100");
        return sketch;
    }

    private static Set<LocalDate> everyDayOf(int... years) {
        Set<LocalDate> all = new HashSet<>();
        for (int year : years) {
            LocalDate first = LocalDate.of(year, 1, 1);
            first.datesUntil(first.plusYears(1)).forEach(all::add);
        }
        return all;
    }

    @Test
    void choosesByTheLabelsWhenAPriceIsMissing() {
        SupplyLine line =
                sketch().size("900", "1").unpriced("600").unpriced("500").line();
        assertFalse(line.purchase().isPriced());
        assertEquals("2x500", text(line.purchase().chosen().orElseThrow()));
        assertEquals(Optional.empty(), line.purchase().chosen().orElseThrow().cost());
        assertEquals(
                List.of("600 units", "500 units"),
                line.purchase().doubts().stream().map(SupplyDoubt::subject).toList());
        assertTrue(line.choices().orElseThrow().all().stream()
                .allMatch(choice -> choice.cost().isEmpty()));
    }

    @Test
    void needsNoWordWhenNoSizeHasAPrice() {
        assertEquals(List.of(), sketch().unpriced("900").line().purchase().doubts());
    }

    @Test
    void saysThatASizeGivesNothing() {
        SupplySketch sketch = sketch();
        sketch.plan.window = Device.Window.LEFT;
        sketch.plan.size("20", "20", "20");
        SupplyLine line = sketch.line();
        assertTrue(line.purchase().chosen().isEmpty());
        assertEquals(SupplyDoubt.Kind.NO_SIZE, line.purchase().doubts().get(0).kind());
        assertTrue(line.choices().isEmpty());
    }

    @Test
    void saysThatNobodyBuysSoMany() {
        SupplyLine line = sketch().unpriced("0.1").line();
        assertTrue(line.purchase().chosen().isEmpty());
        assertEquals(SupplyDoubt.Kind.TOO_MANY, line.purchase().doubts().get(0).kind());
    }

    /** Ten evenings of 100 from what gives 0.1: with one of them at home 999.9 are missing. */
    @Test
    void saysHowMuchNobodyBuysSoManyFor() {
        SupplyLine line =
                sketch().unpriced("0.1").home("0.1", LocalDate.of(2028, 1, 1)).line();
        assertEquals(
                List.of("999.9 units"),
                line.purchase().doubts().stream().map(SupplyDoubt::subject).toList());
    }

    @Test
    void needsNoWordOfPricesWhereNothingIsToBeBought() {
        SupplyLine line = sketch().size("900", "1")
                .unpriced("1000")
                .home("1000", LocalDate.of(2028, 1, 1))
                .line();
        assertEquals(List.of(), line.purchase().doubts());
        assertTrue(line.purchase().chosen().orElseThrow().isEmpty());
    }

    @Test
    void findsNoHourWhenThePharmacyIsClosedForYears() {
        SupplySketch sketch = sketch().unpriced("900");
        sketch.closed = everyDayOf(2025, 2026, 2027, 2028);
        SupplyLine line = sketch.line();
        assertTrue(line.isShort());
        assertEquals(Optional.empty(), line.lastOrder());
        assertFalse(new PharmacyDays(
                        sketch.files().clinic().pharmacy(),
                        sketch.files().clinic().zone())
                .shipsWithin(LocalDate.of(2027, 3, 5), 14));
        assertTrue(line.choices().orElseThrow().all().stream()
                .noneMatch(choice -> choice.isInTime() && !choice.later().isEmpty()));
    }

    @Test
    void findsNoHourWhenItShipsOnlyOnAClosedWeekday() {
        SupplySketch sketch = sketch().unpriced("900");
        sketch.ships = Set.of(DayOfWeek.MONDAY);
        sketch.closed = new HashSet<>(everyDayOf(2025, 2026, 2027));
        sketch.closed.removeIf(day -> day.getDayOfWeek() != DayOfWeek.MONDAY);
        assertEquals(Optional.empty(), sketch.line().lastOrder());
    }

    @Test
    void hasNoHourWhenNothingIsShort() {
        SupplyLine line = sketch().unpriced("900")
                .home("900", LocalDate.of(2028, 1, 1))
                .home("900", LocalDate.of(2028, 1, 1))
                .line();
        assertEquals(Optional.empty(), line.lastOrder());
        assertFalse(line.isToBuy());
        assertTrue(line.purchase().chosen().orElseThrow().isEmpty());
    }

    @Test
    void countsInBoxesAsSoldAndNothingUnused() {
        SupplySketch sketch = sketch().unpriced("900");
        sketch.rules = new SupplyRules(
                Map.of(),
                Map.of("pen-needle", 10),
                1,
                List.of(
                        new SupplyRules.SharpsContainer("1 quart", 10),
                        new SupplyRules.SharpsContainer("2 quarts", 40)));
        List<SupplyItem> items = sketch.supply().items();
        // 10 injections, a second cartridge on one evening, two spare needles.
        assertEquals(
                List.of("pen needle 13", "alcohol swab 22", "gauze pad 11", "sharps container 1"),
                items.stream()
                        .map(item -> item.kind().word() + " " + item.count())
                        .toList());
        assertEquals(Optional.of(2), items.get(0).boxes());
        assertEquals(Optional.of("2 quarts"), items.get(3).size());
    }

    @Test
    void listsNothingWhenNothingIsLeftToGive() {
        SupplySketch sketch = new SupplySketch().unpriced("300");
        sketch.plan.days = 1;
        sketch.plan.dose(1, "100").home("300").happened(1, "100", "0");
        sketch.plan.retrieval = Optional.of(sketch.plan.start.plusDays(2).atTime(8, 30));
        assertEquals(List.of(), sketch.supply().items());
    }

    /** Small cartridges cost less and mean more evenings; both are shown. */
    @Test
    void showsTheSetWithTheFewestEveningsBesideTheCheapest() {
        SupplyLine line = sketch().size("900", "1000")
                .size("250", "200")
                .size("1000", "1100")
                .line();
        assertEquals("4x250", text(line.purchase().chosen().orElseThrow()));
        assertEquals("1x1000", text(line.purchase().calmest().orElseThrow()));
        assertEquals(0, line.purchase().calmest().orElseThrow().changeEvenings());
    }

    @Test
    void showsNoSecondSetThatHasAsManyEvenings() {
        assertEquals(
                Optional.empty(), sketch().size("900", "1000").line().purchase().calmest());
    }

    /** 300 on one evening, 100 at home and cartridges of 100: all of them run dry on that evening. */
    @Test
    void countsTheEveningOnceOnWhichWhatIsAtHomeRunsDryToo() {
        SupplySketch sketch = sketch().size("100", "10").home("100", LocalDate.of(2028, 1, 1));
        sketch.plan.days = 1;
        sketch.plan.doses.clear();
        sketch.plan.dose(1, "300");
        Basket chosen = sketch.line().purchase().chosen().orElseThrow();
        assertEquals("2x100", text(chosen));
        assertEquals(0, chosen.changeEvenings());
        // With nothing at home the first one bought is loaded before, and its own end makes the evening one.
        sketch.plan.stock.clear();
        Basket all = sketch.line().purchase().chosen().orElseThrow();
        assertEquals("3x100", text(all));
        assertEquals(1, all.changeEvenings());
    }
}

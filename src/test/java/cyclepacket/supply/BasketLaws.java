package cyclepacket.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.PlanSketch;
import cyclepacket.ledger.Draw;
import cyclepacket.plan.HouseRules.InUseDayOne;
import cyclepacket.plan.Medicine;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** No row of containers that covers the need is better than the one that is found; every row is tried, one by one. */
class BasketLaws {
    private static final int CASES = Integer.getInteger("cyclepacket.cases", 5_000);
    private static final LocalDate FIRST = LocalDate.of(2027, 3, 5);

    /** One need and what can be bought for it. */
    private record Case(Medicine medicine, List<Draw> draws, List<BasketSearch.Offer> offers, long start) {
        EveningTotals totals() {
            return new EveningTotals(medicine, InUseDayOne.FIRST_USE, draws);
        }
    }

    private static Case random(Random random) {
        PlanSketch sketch = new PlanSketch().size("300", "300", "360");
        sketch.openedDays = random.nextInt(4) == 0 ? 2 + random.nextInt(4) : 28;
        List<Draw> draws = new ArrayList<>();
        long total = 0;
        int evenings = 1 + random.nextInt(10);
        for (int evening = 0; evening < evenings; evening++) {
            int settings = random.nextInt(5) == 0 ? 2 : 1;
            for (int setting = 1; setting <= settings; setting++) {
                long amount = 25_000L * (1 + random.nextInt(10));
                draws.add(draw(FIRST.plusDays(evening), setting, total, amount));
                total += amount;
            }
        }
        long start = random.nextInt(3) == 0 ? 0 : 12_500L * random.nextInt((int) (total / 12_500) + 1);
        List<BasketSearch.Offer> offers = new ArrayList<>();
        boolean alike = random.nextBoolean();
        int sizes = 1 + random.nextInt(3);
        for (int size = 0; size < sizes; size++) {
            // Large enough that a handful covers the need, or the trying out would not end today.
            long content = Math.max(total / 5, 12_500) + 12_500L * random.nextInt(20);
            offers.add(new BasketSearch.Offer(content, alike ? content : 1_000L * (1 + random.nextInt(6))));
        }
        return new Case(sketch.medicine(), draws, offers, start);
    }

    private static Draw draw(LocalDate date, int number, long before, long amount) {
        return new Draw(
                date,
                number,
                units(amount),
                units(before),
                units(before + amount),
                Optional.empty(),
                Optional.empty(),
                false,
                List.of(),
                units(0));
    }

    private static Dose units(long milliUnits) {
        return new Dose(milliUnits, cyclepacket.quantity.DoseUnit.UNITS);
    }

    @Test
    void isNeverBeatenByTryingEveryRow() {
        int evenings = 0;
        int several = 0;
        for (int number = 0; number < CASES; number++) {
            long seed = 20_270_305L + number;
            Case one = random(new Random(seed));
            EveryRow rows = new EveryRow(one.medicine(), one.draws(), one.offers(), one.start());
            for (BasketSearch.Goal goal : BasketSearch.Goal.values()) {
                BasketSearch.Row found = new BasketSearch(one.offers(), goal)
                        .find(
                                one.totals(),
                                one.start(),
                                one.start() > 0,
                                one.totals().goal())
                        .orElseThrow(() -> new AssertionError("seed " + seed + ": nothing found"));
                assertEquals(
                        goal == BasketSearch.Goal.CHEAPEST ? rows.cheapest() : rows.calmest(),
                        goal == BasketSearch.Goal.CHEAPEST
                                ? List.of(found.cost(), (long) found.count(), (long) found.evenings())
                                : List.of((long) found.evenings(), found.cost(), (long) found.count()),
                        "seed " + seed + ", " + goal);
                assertTrue(
                        EveryRow.covers(one.medicine(), one.draws(), one.start(), contents(one, found)),
                        "seed " + seed + ": what was found does not cover the need");
                evenings += found.evenings();
                several += found.count() > 2 ? 1 : 0;
            }
        }
        assertTrue(evenings > CASES && several > CASES / 10, "the cases are too easy: " + evenings + ", " + several);
    }

    private static List<Long> contents(Case one, BasketSearch.Row found) {
        return found.offers().stream()
                .map(offer -> one.offers().get(offer).content())
                .toList();
    }

    /**
     * Two evenings of 200 and 50 at home. Two of 175 cost as much as 50, 50 and 250, whose small ones end on the first
     * evening together with what is at home: fewer containers go before fewer evenings.
     */
    @Test
    void takesFewerContainersBeforeFewerEvenings() {
        Case one = new Case(
                new PlanSketch().size("300", "300", "360").medicine(),
                List.of(draw(FIRST, 1, 0, 200_000), draw(FIRST.plusDays(1), 1, 200_000, 200_000)),
                List.of(
                        new BasketSearch.Offer(175_000, 3),
                        new BasketSearch.Offer(50_000, 1),
                        new BasketSearch.Offer(250_000, 4)),
                50_000);
        BasketSearch.Row cheapest = new BasketSearch(one.offers(), BasketSearch.Goal.CHEAPEST)
                .find(one.totals(), one.start(), true, 400_000)
                .orElseThrow();
        assertEquals(List.of(6L, 2, 1), List.of(cheapest.cost(), cheapest.count(), cheapest.evenings()));
        BasketSearch.Row calmest = new BasketSearch(one.offers(), BasketSearch.Goal.FEWEST_EVENINGS)
                .find(one.totals(), one.start(), true, 400_000)
                .orElseThrow();
        assertEquals(List.of(6L, 3, 0), List.of(calmest.cost(), calmest.count(), calmest.evenings()));
    }

    @Test
    void endsWithoutAnythingToBuy() {
        Case one = random(new Random(1));
        BasketSearch none = new BasketSearch(List.of(), BasketSearch.Goal.CHEAPEST);
        assertTrue(none.find(one.totals(), 0, false, one.totals().goal()).isEmpty());
        BasketSearch drops = new BasketSearch(List.of(new BasketSearch.Offer(1, 1)), BasketSearch.Goal.CHEAPEST);
        assertTrue(drops.find(one.totals(), 0, false, one.totals().goal()).isEmpty());
        assertEquals(
                0,
                none.find(one.totals(), one.totals().goal(), true, one.totals().goal())
                        .orElseThrow()
                        .count());
    }
}

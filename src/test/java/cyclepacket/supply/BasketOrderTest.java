package cyclepacket.supply;

import static cyclepacket.DrawSketch.draw;
import static org.junit.jupiter.api.Assertions.assertEquals;

import cyclepacket.PlanSketch;
import cyclepacket.plan.HouseRules.InUseDayOne;
import java.util.List;
import org.junit.jupiter.api.Test;

/** In which order the boxes of a basket are loaded, where a cartridge may be used for two days only. */
class BasketOrderTest {

    /**
     * 150 on the first evening, 130 on the second, 100 on the fourth. The box of 280 lasts two evenings and one of 100 the
     * fourth; the 100 first would be empty on the first evening, and the 280 after it too old on the fourth.
     */
    @Test
    void namesTheBoxesInTheOrderOfLoading() {
        PlanSketch sketch = new PlanSketch().size("300", "300", "300");
        sketch.openedDays = 2;
        EveningTotals totals = new EveningTotals(
                sketch.medicine(),
                InUseDayOne.FIRST_USE,
                List.of(draw(1, 1, 0, 150), draw(2, 1, 150, 280), draw(4, 1, 280, 380)));
        List<BasketSearch.Offer> offers =
                List.of(new BasketSearch.Offer(100_000, 100), new BasketSearch.Offer(280_000, 280));
        BasketSearch.Row row = new BasketSearch(offers, BasketSearch.Goal.CHEAPEST)
                .find(totals, 0, false, 380_000)
                .orElseThrow();
        assertEquals(List.of(1, 0), row.offers());
    }
}

package cyclepacket.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What to buy of vials, tablets and patches: with it nothing runs short, and with one piece less something does. Numbers
 * worked by hand on the invented plans of the demo.
 */
class VialShopTest {
    private static SupplyLine line(String plan, String medicine, String stock, String size, int count)
            throws IOException {
        LaidOut laidOut =
                LaidOut.demo(plan).with("patients/" + plan + ".yaml", stock, "{size: " + size + ", count: " + count);
        return SupplyPlan.of(laidOut.files(), laidOut.ledger()).of(medicine).orElseThrow();
    }

    /**
     * 13 evenings take 3 vials of 75 each: 39, 30 at home. The others: the need of the demo's own days, and a stock that is
     * too small for it.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            LM-06233-issue-2 | menotropin-vial  | {size: 75, count: 40   | 75  | 30
            LM-06233-issue-2 | menotropin-vial  | {size: 75, count: 40   | 75  | 1
            LM-06233-issue-2 | leuprolide-vial  | {size: 14, count: 2    | 14  | 1
            FT-08440-issue-2 | progesterone-oil | {size: 500, count: 2   | 500 | 1
            FT-08440-issue-2 | estradiol-tablet | {size: 2, count: 110   | 2   | 60
            FT-08440-issue-2 | estradiol-patch  | {size: 0.1, count: 24  | 0.1 | 8
            """)
    void buysTheLeastThatLasts(String plan, String medicine, String stock, String size, int home) throws IOException {
        SupplyLine before = line(plan, medicine, stock, size, home);
        assertTrue(before.isShort(), "the stock of the case is to be too small");
        int count = before.purchase().chosen().orElseThrow().count();
        assertTrue(count > 0);
        assertFalse(line(plan, medicine, stock, size, home + count).isShort(), count + " are too few");
        assertTrue(line(plan, medicine, stock, size, home + count - 1).isShort(), count + " are too many");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            LM-06233-issue-2 | menotropin-vial | {size: 75, count: 40 | 75 | 30 | 9
            """)
    void buysNineVialsForThirteenEvenings(
            String plan, String medicine, String stock, String size, int home, int expected) throws IOException {
        assertEquals(
                expected,
                line(plan, medicine, stock, size, home)
                        .purchase()
                        .chosen()
                        .orElseThrow()
                        .count());
    }
}

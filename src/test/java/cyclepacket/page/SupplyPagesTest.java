package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The shopping list of the patient and the order sheet of the clinic; the demo's figures, worked by hand. */
class SupplyPagesTest {
    private static String patient(int issue) throws Exception {
        return plain(PageText.text(PageText.of(PacketRulesTest.xhtml(new DemoPlan(issue)))
                .part("supply")
                .get(0)));
    }

    private static String sheet(int issue) {
        String text = plain(ChartLines.text(ChartSamples.pdf(ChartSamples.source(ChartSamples.demo(issue)))));
        return text.substring(text.indexOf("9. Order sheet"));
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }

    @Test
    void listsWhatToOrderStepByStepWithABoxToTick() throws Exception {
        SupplyView view = new DemoPlan(1).view().supply();
        assertEquals(2, view.orders().size());
        assertEquals(2, view.laterOrders().size());
        String page = patient(1);
        for (String words : List.of(
                "Ask us before you order.",
                "Call the pharmacy by Thursday 11 March, 2:00 p.m. (14:00).",
                "follitropin: 1 box of 900 units Thursday 11 March, 2:00 p.m. (14:00)",
                "ganirelix: 2 syringes of 0.25 mg Thursday 11 March, 2:00 p.m. (14:00)",
                "Order this only if you have no trigger call by then. follitropin: 1 box of 300 units Monday 15 March",
                "When it comes",
                "Have 1 sharps container.")) {
            assertTrue(page.contains(words), page);
        }
    }

    @Test
    void ordersNothingWhenEverythingIsThere() throws Exception {
        String page = patient(3);
        assertFalse(page.contains("What to order") || page.contains("When it comes"), page);
    }

    @Test
    void printsTheOrderSheetWithTheCostOfWhatIsLeftOver() {
        String sheet = sheet(1);
        for (String words : List.of(
                "follitropin 1 × 900 units 1245 USD 1 Thu 11 Mar 1 × 300 units 2:00 p.m. (14:00)",
                "follitropin Mon 15 Mar 1 × 300 units Wed 17 Mar 50 % 17 % 2:00 p.m. (14:00)",
                "The clinic file gives no odds, so every length counts alike.",
                "1 × 900 units 1 × 300 units 50 % 581.25 units 602 USD 1088 USD yes",
                "follitropin 10 1,875 units 12 Mar 13 Mar 375 units",
                "pen needles 18")) {
            assertTrue(sheet.contains(words), words + " in " + sheet);
        }
    }

    @Test
    void keepsTheOrderSheetShortWhereNothingIsMissing() {
        String sheet = sheet(3);
        assertTrue(sheet.contains("Nothing has to be ordered"), sheet);
        assertFalse(sheet.contains("In steps"), sheet);
        assertEquals(-1, sheet.indexOf("USD"));
    }
}

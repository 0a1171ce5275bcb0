package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import cyclepacket.course.Course;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.packet.PrintedDemo;
import cyclepacket.plan.PlanFiles;
import cyclepacket.supply.SupplyPlan;
import java.io.IOException;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Sentences of the other forms that could hurt if they were wrong. */
class FormSayingsTest {
    private static final PageWriter WRITER = new PageWriter(DemoPlan.TEMPLATES);

    private static String packet(LaidOut plan) throws Exception {
        PlanFiles files = plan.files();
        Course course = Course.of(files);
        CycleLedger ledger = CycleLedger.of(files, course);
        PacketFacts facts = new PacketFacts(
                files, course, ledger, SupplyPlan.of(files, ledger), "ABCD-EFGH-JKM", false, Optional.empty());
        return WRITER.packet(facts);
    }

    private static String text(LaidOut plan) throws Exception {
        return PageText.of(packet(plan)).text().replace('\u00a0', ' ');
    }

    private static String part(LaidOut plan, String id) throws Exception {
        return PageText.of(packet(plan)).all("div").stream()
                .filter(div -> div.getAttribute("id").equals(id))
                .map(PageText::text)
                .collect(Collectors.joining(" "))
                .replace('\u00a0', ' ');
    }

    private static LaidOut demo(String plan) throws IOException {
        return LaidOut.demo(plan);
    }

    /** After the first of two parts nobody may read that nothing more is injected. */
    @Test
    void saysNoMoreInjectionsAfterTheLastPartAlone() throws Exception {
        String door = part(demo("EF-07318-issue-2"), "door");
        String end = "No more injections after this";
        assertEquals(door.indexOf(end), door.lastIndexOf(end), door);
        assertTrue(door.indexOf(end) > door.indexOf("Thursday 13 May At exactly"), door);
        assertTrue(part(demo("EF-07318-issue-2"), "trigger").contains("Your trigger: 2 injections, exact times"));
        assertTrue(part(demo("EF-07318"), "trigger").contains("Your trigger: 2 injections, exact times"));
    }

    /** 24 April to 6 May takes 13 x 3 = 39 vials; the 30 at home are 9 too few, and none of them is a syringe. */
    @Test
    void ordersVialsAsVials() throws Exception {
        String supply = part(
                demo("LM-06233-issue-2")
                        .with("patients/LM-06233-issue-2.yaml", "{size: 75, count: 40", "{size: 75, count: 30"),
                "supply");
        assertTrue(supply.contains("Check that you have: 30 vials."), supply);
        assertTrue(supply.contains("vials of 75 units"), supply);
        assertFalse(supply.contains("syringes of 75 units"), supply);
    }

    /** What a syringe's own file says of its bubble and of light is what the patient reads. */
    @Test
    void saysOfBubbleAndLightWhatTheMedicineFileSays() throws Exception {
        LaidOut plan = demo("SM-04417")
                .with("medicines/trigger-syringe.yaml", "hold: 5 s", "hold: 5 s\nbubble: leave\nlight: keep-dark");
        String text = text(plan);
        assertTrue(text.contains("Do not push out the air bubble."), text);
        assertTrue(text.contains("Keep it in its box until you use it. Light harms it."), text);
    }

    /** What goes on until a call, and what has no first day yet, cannot be promised to last. */
    @Test
    void promisesNoStockPastTheList() throws Exception {
        String supply = part(demo("FT-08440"), "supply");
        assertTrue(supply.contains("Check that you have: 110 tablets. This lasts for every day on your list."), supply);
        assertTrue(supply.contains("Check that you have: 2 vials. We tell you when it starts."), supply);
        assertFalse(supply.contains("all your evenings"), supply);
    }

    /** Somebody with two injections to take must not read that the second is forbidden. */
    @Test
    void forbidsNoPartOfATriggerOfTwo() throws Exception {
        String trigger = part(demo("EF-07318-issue-2"), "trigger");
        assertTrue(trigger.contains("Do not inject the same one again."), trigger);
        assertFalse(trigger.contains("Do not inject a second one."), trigger);
    }

    @Test
    void sendsNothingOfTheRoomToTheRefrigerator() throws Exception {
        String keeping = part(demo("LS-09102"), "keeping");
        assertFalse(keeping.contains("middle shelf") || keeping.contains("cool bag"), keeping);
        assertTrue(part(demo("EF-07318"), "keeping").contains("middle shelf"));
    }

    /** The clinic's 12.5 are units; a pen in micrograms has its own number. */
    @Test
    void keepsTheSmallRemainderInItsUnit() throws Exception {
        String text = text(demo("EF-07318"));
        assertTrue(text.contains("The number is less than 1 microgram?"), text);
        assertFalse(text.contains("12.5"), text);
        assertFalse(text.matches("(?s).*[0-9] units?\\b.*"), text);
    }

    /** A pen that is thrown away whole has no cartridge that could be given whole. */
    @Test
    void speaksOfNoCartridgeWhereThereIsNone() throws Exception {
        for (String plan : new String[] {"EF-07318", "EF-07318-issue-2"}) {
            String text = text(demo(plan)).toLowerCase(java.util.Locale.ROOT);
            assertFalse(text.contains("cartridge"), text);
            assertTrue(text.contains("never inject the whole pen"), text);
        }
        assertTrue(text(demo("DA-05120")).contains("New-cartridge card"));
    }

    @Test
    void countsTabletsAndPatchesForThePatient() throws Exception {
        String door = part(demo("FT-08440-issue-2"), "door");
        assertTrue(door.contains("3 mg 1 and a half tablets"), door);
        assertTrue(door.contains("0.2 mg 2 patches"), door);
        String days = part(demo("FT-08440-issue-2"), "days");
        assertTrue(days.contains("estradiol (tablet) (1 and a half tablets each)"), days);
        assertTrue(days.contains("estradiol (patch) (2 patches)"), days);
    }

    /** Twice a day 40 micrograms are twice the 20 mark and never once the 40 mark. */
    @Test
    void marksEachHalfOfADayByItself() throws Exception {
        LaidOut plan = LaidOut.plan("microdose-flare", FormPackets.ANCHORS.get("microdose-flare"));
        assertTrue(text(plan).contains("to the 20 mark each"), text(plan));
        assertFalse(text(plan).contains("40 mark"), text(plan));
    }

    /** What goes on until the patient is told to stop is never held back because a call is late. */
    @Test
    void neverLetsAStopRuleWaitForACall() throws Exception {
        String door = text(demo("LS-09102"));
        assertFalse(door.contains("before we call"), door);
        assertTrue(door.contains("Do not stop on your own. We tell you when."), door);
    }

    @Test
    void leavesRoomForVialsAndMarkOnAnEveningThatWaits() throws Exception {
        String door = part(demo("LM-06233-issue-2"), "door-2");
        assertTrue(door.replaceAll(" +", " ").contains("units vials: mark:"), door);
    }

    @Test
    void keepsRoomTemperatureOutOfTheRefrigerator() throws Exception {
        String keeping = part(demo("FT-08440"), "keeping");
        assertTrue(
                keeping.contains("At room temperature, 68 to 77 °F (20 to 25 °C). Not in the refrigerator."), keeping);
    }

    @Test
    void saysHowManyLiquidsAreLeftOver() throws Exception {
        String page = part(demo("LM-06233-issue-2"), "how-menotropin-vial");
        assertTrue(page.contains("26 liquids are left over."), page);
    }

    /** Two medicines in one syringe only where the clinic file says so. */
    @Test
    void sharesASyringeOnlyWhereTheClinicSaysSo() throws Exception {
        assertTrue(
                part(demo("LM-06233-issue-2"), "how-menotropin-vial").contains("Draw nothing else into this syringe."));
        LaidOut shared = demo("LM-06233-issue-2")
                .with(
                        "clinic.yaml",
                        "house-rules:\n",
                        "house-rules:\n  one-syringe: [[menotropin-vial, leuprolide-vial]]\n");
        assertTrue(part(shared, "how-menotropin-vial")
                .contains("You may draw this and your small vial into one syringe."));
    }

    /** No page sends the reader to a table, a drawing or a page that this packet does not have. */
    @Test
    void sendsNobodyToWhatIsNotThere() throws Exception {
        String card = text(demo("EF-07318-issue-2"));
        assertFalse(card.contains("Look in the table"), card);
        assertFalse(card.contains("The number is not in the table?"), card);
        assertTrue(card.contains("The whole number is still to give. Call us with your number before you give more."));
        assertTrue(text(demo("SM-04417")).contains("The number is not in the table?"));

        String waits = part(demo("LM-06233"), "how-menotropin-vial");
        assertTrue(waits.contains("On our call we tell you how many vials."), waits);
        assertFalse(waits.contains("drawing") || waits.contains("picture"), waits);
        assertTrue(part(demo("LM-06233-issue-2"), "how-menotropin-vial").contains("This drawing is not true size."));

        String oil = text(demo("FT-08440"));
        assertFalse(oil.contains("Order and spots"), oil);
        assertTrue(oil.contains("Use the upper outer quarter, not the side of last time."), oil);
        assertTrue(text(demo("FT-08440-issue-2")).contains("The page Order and spots shows it."));
    }

    /** A nose spray cannot be cut in half. */
    @Test
    void asksToCutNothingThatHasNoPieces() throws Exception {
        assertFalse(PageText.of(WRITER.packet(FormPackets.facts("nasal-agonist")))
                .text()
                .contains("Do not cut"));
    }

    /** Sesame is a common allergy: its name is read in the patient's language. */
    @Test
    void namesTheOilInTheLanguageOfThePatient() throws Exception {
        LaidOut plan = demo("FT-08440");
        String spanish = PrintedDemo.of("FT-08440", "es", "standard", "letter").xhtml();
        assertTrue(spanish.contains("Contiene aceite de sésamo (ajonjolí)."), spanish);
        assertTrue(text(plan).contains("The oil is sesame oil."));
    }
}

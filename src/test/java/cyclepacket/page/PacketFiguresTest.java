package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import cyclepacket.plan.Device;
import cyclepacket.plan.HouseRules;
import cyclepacket.plan.Plan;
import cyclepacket.plan.RecordLine.Given;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo's figures, each worked by hand; common practice of the trade, no published source, unless a test names one. */
class PacketFiguresTest {
    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    private static String part(DemoPlan plan, String id) throws Exception {
        return plain(
                PageText.text(PageText.of(PacketRulesTest.xhtml(plan)).part(id).get(0)));
    }

    private static List<String> boxes(DoorView door) {
        return door.rows().stream()
                .map(row -> plain(row.day().date() + ": "
                        + row.cells().stream()
                                .flatMap(Optional::stream)
                                .flatMap(cell -> cell.amounts().stream())
                                .map(box -> box.text().orElse("__"))
                                .toList()))
                .toList();
    }

    @Test
    void printsTheFirstIssueFromTheStartToTheLastPossibleEvening() {
        DoorView door = new DemoPlan(1).view().door();
        assertEquals(13, door.rows().size());
        assertEquals("8 March: [187.5 units]", boxes(door).get(3));
        assertEquals("9 March: [__]", boxes(door).get(4));
        assertEquals("10 March: [__, __]", boxes(door).get(5));
        assertEquals("18 March", plain(door.notFinished().orElseThrow().date()));
        assertEquals("6:00 p.m. (18:00)", plain(door.callBy().orElseThrow()));
        assertEquals(
                List.of(new ChangeView("expect", Optional.of("2"))),
                door.rows().get(3).changes());
        assertEquals("1", door.rows().get(3).injections());
        assertEquals("2", door.rows().get(3).injectionsIfEnds());
        assertEquals(
                List.of(new ChangeView("maybe", Optional.empty())),
                door.rows().get(8).changes());
    }

    /** Owed exactly 30 to 150; on dial marks 37.5 to 150, because this clinic writes the higher mark. */
    @Test
    void expectsTheFirstNewCartridgeOnTheFourthEvening() throws Exception {
        String page = part(new DemoPlan(1), "cartridges");
        assertTrue(page.contains("Expect a new cartridge on Monday 8 March."), page);
        assertTrue(page.contains("37.5 to 150 units"), page);
        assertTrue(page.contains("Maybe a new cartridge on Saturday 13 March or Sunday 14 March."), page);
        assertTrue(page.contains("Check first: true only while your dose is 187.5 units."), page);
        assertTrue(page.contains("87.5 units 87.5 units Saturday 13 March or Sunday 14 March"), page);
        assertTrue(page.contains("100 units 100 units Saturday 13 March 112.5 units"), page);
    }

    @Test
    void saysUntilWhenThereIsEnoughAndWhenToCall() throws Exception {
        String first = part(new DemoPlan(1), "supply");
        assertTrue(first.contains("If your amount stays the same, you have enough until Friday 12 March."), first);
        assertTrue(first.contains("Ask us then if you still have enough."), first);
        assertTrue(first.contains("Call the pharmacy by Thursday 11 March, 2:00 p.m. (14:00)."), first);
        String second = part(new DemoPlan(2), "supply");
        assertTrue(second.contains("You have enough for sure until Thursday 11 March."), second);
        assertTrue(second.contains("Call the pharmacy by Wednesday 10 March, 2:00 p.m. (14:00)."), second);
        assertTrue(part(new DemoPlan(3), "supply").contains("This lasts for all your evenings."));
    }

    /** Five small syringes from 10 March reach the 14th; a trigger that is only planned for the 13th must not hide that. */
    @Test
    void countsOnTheLongestCourseUntilTheTriggerIsCalled() throws Exception {
        String planned = part(new DemoPlan(2), "supply");
        assertTrue(
                planned.contains("Check that you have: 5 syringes. You have enough for sure until Sunday 14 March."),
                planned);
        assertTrue(planned.contains("This is enough even if you need evenings until Wednesday 17 March."), planned);
        assertFalse(planned.contains("This lasts for all your evenings."), planned);
    }

    @Test
    void replacesTheFirstIssueByTheSecond() throws Exception {
        String start = part(new DemoPlan(2), "start");
        assertTrue(start.contains("REPLACES issue 1 of 3 March."), start);
        assertTrue(
                start.contains(
                        "First copy your numbers into My log. Take the old packet off the door. Tear it up. KEEP the page My log."),
                start);
        assertEquals(
                List.of(
                        "9 March: [212.5 units]",
                        "10 March: [212.5 units, 0.25 mg]",
                        "11 March: [212.5 units, 0.25 mg]",
                        "12 March: [__, __]"),
                boxes(new DemoPlan(2).view().door()));
        String page = part(new DemoPlan(2), "cartridges");
        assertTrue(page.contains("12.5 to 37.5 units"), page);
        assertTrue(page.contains("Maybe a new cartridge on Friday 12 March."), page);
    }

    @Test
    void listsPastEveningsAsTheyWereGiven() throws Exception {
        String days = part(new DemoPlan(2), "days");
        assertTrue(days.contains("Day follitropin ganirelix Done? "), days);
        assertTrue(days.contains("Mon 8 March 187.5 units done"), days);
        assertTrue(days.contains("No trigger call from us? Call us before 6:00 p.m. (18:00) on that day."), days);
    }

    @Test
    void tellsAPastEveningFromWhatIsKnownOfIt() throws Exception {
        DemoPlan plan = new DemoPlan(3);
        plan.lastEvening = Optional.of(new Given.Missed());
        assertTrue(part(plan, "days").contains("Thu 11 March (missed) 0.25 mg (done)"), part(plan, "days"));
        plan.lastEvening = Optional.of(new Given.Unknown());
        assertTrue(part(plan, "days").contains("Thu 11 March (not known) 0.25 mg (done)"), part(plan, "days"));
        plan.lastEvening = Optional.of(new Given.Amount(DemoPlan.units("100")));
        assertTrue(part(plan, "days").contains("Thu 11 March 100 units (part given)"), part(plan, "days"));
    }

    /** 36 elapsed hours before 08:30 on 15 March 2027, over a clock change (RFC 5545 section 3.3.6: hours are exact). */
    @Test
    void printsTheCalledTriggerOnBothClocks() throws Exception {
        String trigger = part(new DemoPlan(3), "trigger");
        assertTrue(trigger.contains("Saturday 13 March"), trigger);
        assertTrue(trigger.contains("at exactly 7:30 p.m. (19:30)"), trigger);
        assertTrue(trigger.contains("Eastern time (New York)"), trigger);
        assertTrue(trigger.contains("Set one for 7:00 p.m. (19:00) to get ready."), trigger);
        assertTrue(trigger.contains("Take no follitropin on this day. Your last one is Friday 12 March."), trigger);
        assertTrue(trigger.contains("We start at 8:30 a.m. (08:30) on Monday 15 March."), trigger);
        String door = part(new DemoPlan(3), "door");
        assertTrue(door.contains("At exactly 7:30 p.m. (19:30)") && door.contains("250 micrograms"), door);
    }

    @Test
    void leavesOneInjectionOnTheDoorOnTheLastDay() throws Exception {
        DemoPlan plan = new DemoPlan(3);
        plan.preparedOn = Optional.of(DemoPlan.march(13));
        assertEquals(List.of(), plan.view().door().rows());
        assertTrue(part(plan, "door").contains("One more time"), part(plan, "door"));
        assertTrue(
                part(plan, "start").contains("Use the one-time syringe on Saturday 13 March at 7:30 p.m. (19:30)."),
                part(plan, "start"));
        plan.preparedOn = Optional.of(DemoPlan.march(14));
        assertTrue(part(plan, "door").contains("You have no evening ahead in this packet."), part(plan, "door"));
    }

    @Test
    void namesTheNightAndBothClocksForAPatientFarAway() throws Exception {
        DemoPlan plan = new DemoPlan(3);
        plan.patientZone = ZoneId.of("Europe/London");
        TriggerView.Called called = plan.view().trigger().orElseThrow().called().orElseThrow();
        assertEquals("Sunday 14 March", plain(called.day().full()));
        assertEquals(
                List.of("12:00 midnight (00:00)", "12:30 a.m. (00:30)"),
                called.alarms().stream().map(PacketFiguresTest::plain).toList());
        assertFalse(part(plan, "door").contains("clinic"));
        String trigger = part(plan, "trigger");
        assertTrue(trigger.contains("at exactly 12:30 a.m. (00:30)"), trigger);
        assertTrue(trigger.contains("This is in the night between Saturday 13 March and Sunday 14 March."), trigger);
        assertTrue(trigger.contains("At the clinic it is then Saturday 13 March, 7:30 p.m. (19:30)."), trigger);
        assertTrue(trigger.contains("That is clinic time."), trigger);
    }

    @Test
    void primesANewCartridgeOnlyUnlessTheMedicineSaysEachTime() throws Exception {
        String page = part(new DemoPlan(1), "how-fsh-pen");
        assertTrue(page.contains("Prime only when you load a new cartridge."), page);
        DemoPlan each = new DemoPlan(1);
        each.prime = Device.Prime.EACH_INJECTION;
        String other = part(each, "how-fsh-pen");
        assertTrue(
                other.contains("Prime the pen each time, as your pen's leaflet shows.")
                        && !other.contains("only when you load"),
                other);
    }

    @Test
    void tellsHowToInject() throws Exception {
        String page = part(new DemoPlan(1), "how-fsh-pen");
        for (String words : List.of(
                "One new pen needle (30 gauge, 8 mm) for each injection.",
                "Two alcohol swabs for each injection.",
                "Use the spot on the list Day by day.",
                "Keep out of the dashed ring: stay at least 1 inch (2.5 cm) from your navel.",
                "Never use the same spot two days in a row.",
                "Pinch up a fold of skin.",
                "Push the needle straight in",
                "Count slowly to 10.",
                "0 means you got the whole dose.",
                "Get the new-cartridge card.",
                "This pen shows what you still need.")) {
            assertTrue(page.contains(words), words);
        }
        assertTrue(part(new DemoPlan(1), "how-antagonist-syringe").contains("Count slowly to 5."));
        DemoPlan large = new DemoPlan(1);
        large.textSize = Plan.TextSize.LARGE;
        assertTrue(part(large, "how-fsh-pen").contains("at least 1 inch (2.5 cm) from your navel"));
    }

    /** Spots alternate between the sides; two injections of one evening lie on different sides. */
    @Test
    void namesTheSpotOfEachInjectionBesideIt() throws Exception {
        String days = part(new DemoPlan(1), "days");
        assertTrue(days.contains("In this order: evening pen, then small syringe."), days);
        assertTrue(days.contains("Fri 5 March 187.5 units spot 1"), days);
        assertTrue(days.replaceAll("\\s+", " ").contains("units spot 7 syringe spot 4 wait"), days);
        PageText page = PageText.of(PacketRulesTest.xhtml(new DemoPlan(1)));
        assertEquals(List.of(), page.part("sites"));
        DemoPlan divided = new DemoPlan(1);
        divided.dialMost = "150";
        assertEquals(
                1, PageText.of(PacketRulesTest.xhtml(divided)).part("sites").size());
        assertFalse(part(divided, "days").contains("spot"));
    }

    /** What is used alike is taught once, and both names stand above it. */
    @Test
    void teachesTwoAlikeSyringesOnOnePage() throws Exception {
        PageText page = PageText.of(PacketRulesTest.xhtml(new DemoPlan(1)));
        assertEquals(
                1,
                page.parts().stream()
                        .filter(part -> part.getAttribute("class").contains("form-syringe"))
                        .count());
        for (String id : List.of("how-antagonist-syringe", "how-trigger-syringe")) {
            String both = plain(PageText.text(page.part(id).get(0)));
            assertTrue(both.contains("It must say ganirelix. It must not say choriogonadotropin alfa."), both);
            assertTrue(both.contains("It keeps the eggs from being released too early."), both);
            assertTrue(both.contains("Use it only at the time on the trigger page."), both);
            assertTrue(both.contains("Do this with the trigger page beside you. Look at the clock."), both);
            assertTrue(both.contains("Take the one that the door page names. Read its name out loud."), both);
        }
        DemoPlan large = new DemoPlan(1);
        large.textSize = Plan.TextSize.LARGE;
        assertFalse(part(large, "how-antagonist-syringe").contains("two syringes"));
    }

    @Test
    void usesSoapWhereTheClinicOrThePatientDoes() throws Exception {
        DemoPlan soap = new DemoPlan(1);
        soap.swab = HouseRules.SwabSkin.SOAP_AND_WATER;
        assertFalse(part(soap, "how-fsh-pen").contains("swab."));
        DemoPlan avoids = new DemoPlan(1);
        avoids.avoid = List.of("alcohol");
        String page = part(avoids, "how-fsh-pen");
        assertTrue(page.contains("Soap, water and a clean towel.") && page.contains("You avoid alcohol."), page);
    }

    @Test
    void turnsTheCardForAPenThatShowsWhatIsLeft() throws Exception {
        DemoPlan left = new DemoPlan(1);
        left.window = Device.Window.LEFT;
        String card = part(left, "card");
        assertTrue(card.contains("what is left in this cartridge"), card);
        assertTrue(card.contains("Dial the amount you copied: Still to give."), card);
        String owed = part(new DemoPlan(1), "card");
        assertTrue(owed.contains("Do not turn the dial.") && owed.contains("Dial the number you wrote."), owed);
        assertTrue(owed.contains("EXAMPLE: it says 25 units."), owed);
        assertTrue(part(left, "how-fsh-pen").contains("This pen shows what is left inside."));
    }

    @Test
    void givesOneBoxAndOneTickForEachPartOfADividedDose() throws Exception {
        DemoPlan divided = new DemoPlan(1);
        divided.dialMost = "150";
        DoorView door = divided.view().door();
        assertEquals("5 March: [100 units, 87.5 units]", boxes(door).get(0));
        assertEquals(2, door.rows().get(0).readings().size());
        assertEquals("2", door.rows().get(3).injections());
        assertEquals("3", door.rows().get(3).injectionsIfEnds());
        assertTrue(part(divided, "card").contains("Never add it to the next part."));
        assertFalse(part(new DemoPlan(1), "card").contains("Never add it to the next part."));
    }

    @Test
    void printsTheClinicsOwnLinesWordForWord() throws Exception {
        String page = part(new DemoPlan(1), "trouble");
        assertTrue(
                page.contains(
                        "evening pen (follitropin): Call the clinic before you take it. Never take two doses at once."),
                page);
        String calls = part(new DemoPlan(1), "calls");
        assertTrue(calls.contains("You gain weight fast: at least 2 pounds in 24 hours."), calls);
        assertTrue(calls.contains("100.4 °F (38 °C) or more"), calls);
    }

    /** Signs of ovarian hyperstimulation that patients are told to call for: RCOG patient information, 2016. */
    @Test
    void listsTheSignsToCallFor() throws Exception {
        String calls = part(new DemoPlan(1), "calls");
        for (String sign : List.of(
                "swells", "throw up", "pain", "thirsty", "pee very little", "trouble breathing", "leg is red")) {
            assertTrue(calls.contains(sign), sign);
        }
    }

    /** USP 659: refrigerator 2 to 8 degrees Celsius, 36 to 46 Fahrenheit; FDA advice on sharps for the container. */
    @Test
    void saysHowToKeepAndThrowAway() throws Exception {
        String page = part(new DemoPlan(1), "keeping");
        for (String words : List.of(
                "36 to 46 °F (2 to 8 °C)",
                "Never freeze it.",
                "28 days",
                "three quarters full",
                "does not leak",
                "stands firm",
                "tight lid",
                "Never flush",
                "recycl",
                "child")) {
            assertTrue(page.contains(words), words);
        }
    }

    /** The locked path in its order: the needle, the check, the dial back to 0, priming, then the number. */
    @Test
    void holdsTheWholePathOnOneSideOfTheCard() throws Exception {
        for (Device.Window window : Device.Window.values()) {
            DemoPlan plan = new DemoPlan(1);
            plan.window = window;
            String card = part(plan, "card");
            int at = -1;
            for (String step : List.of(
                    window == Device.Window.OWED ? "Do not turn the dial." : "Do not press yet.",
                    "Maybe a blocked needle.",
                    "Take the used needle off",
                    "turn the dial back to 0",
                    "Take the box with the next number.",
                    "Put on a new needle.",
                    "Prime, as your pen's leaflet shows.",
                    window == Device.Window.OWED ? "Dial the number you wrote." : "Dial the amount you copied",
                    "Tick Now 0",
                    "Does the pen stop again?")) {
                assertTrue(card.indexOf(step) > at, step + " in its place: " + card);
                at = card.indexOf(step);
            }
            int marked = card.indexOf("Look at the door page. Does it say new cartridge for tonight?");
            int listed = card.indexOf("Look in the table. Is your number there?");
            assertTrue(0 < marked && marked < listed && listed < card.indexOf("Take the used needle off"), card);
            assertTrue(card.contains("Any no? Stop. Call us before you give more."), card);
        }
    }

    /** The door page asks once; what the card asks later is the box beside it, and leaves the first answer alone. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void asksOfTheCardWhatTheDoorPageHasABoxFor(String language) {
        Wording wording = Wording.load(DemoPlan.TEMPLATES, language);
        String box = wording.text("door.change.zero").replace(":", "");
        String last = wording.text("card.finish.2");
        assertTrue(last.contains("*" + box + "*"), last);
        assertTrue(wording.text("card.write.zero").contains("*" + box + "*"), "the same box, no question of its own");
        String no = wording.text("door.no.owed").replaceAll(",.*", "");
        assertTrue(last.contains("*" + no + "*"), "the first answer stays: " + last);
        assertTrue(wording.text("card.stop.3").contains("*" + no + "*"), wording.text("card.stop.3"));
    }

    /** One distance from the navel on every page, in both sizes and languages; the spots of the map lie outside it. */
    @ParameterizedTest
    @CsvSource({"en, standard", "en, large", "es, standard", "es, large"})
    void keepsOneDistanceFromTheNavel(String language, String size) throws Exception {
        String least = language.equals("en") ? "1 inch (2.5 cm)" : "1 pulgada (2.5 cm)";
        Pattern lengths = Pattern.compile("\\d[\\d.]* (?:inch(?:es)?|pulgadas?)(?: \\([^)]*\\))?");
        for (String name : List.of("SM-04417", "DA-05120")) {
            LaidOut laid =
                    LaidOut.demo(name).with("patients/" + name + ".yaml", "text-size: standard", "text-size: " + size);
            String text = plain(PageText.of(new PageWriter(DemoPlan.TEMPLATES)
                            .packet(FormPackets.facts(laid), language, !language.equals("en")))
                    .text());
            // The line to check the size of the print with is 2 inches long.
            List<String> told = lengths.matcher(text.replaceAll("\\(2 (?:inches|pulgadas)\\)", ""))
                    .results()
                    .map(MatchResult::group)
                    .toList();
            assertTrue(told.contains(least), name + told);
            assertEquals(
                    List.of(), told.stream().filter(each -> !each.equals(least)).toList(), name);
        }
    }

    /** What is left is never a higher mark, and the pen does not say it all of itself. */
    @Test
    void keepsTheOtherPensLinesOffTheCardOfAPenThatShowsWhatIsLeft() throws Exception {
        DemoPlan left = new DemoPlan(1);
        left.window = Device.Window.LEFT;
        String page = plain(PageText.of(PacketRulesTest.xhtml(left)).text());
        String card = page.substring(page.indexOf("New-cartridge card Use this card"), page.indexOf("How to use your"));
        for (String other : List.of("higher mark", "you turned the dial", "whole number is still to give")) {
            assertFalse(card.contains(other), other);
        }
    }

    @Test
    void tellsOneOrderForANumberBelowTheFirstMark() throws Exception {
        String page = plain(PageText.of(PacketRulesTest.xhtml(new DemoPlan(2))).text());
        assertTrue(page.contains("The number is less than 12.5 units? Call us before you do more."), page);
        assertTrue(
                page.contains("The number is 12.5 units or more, and between two marks? Write the higher mark."), page);
    }

    /** Issue 2 has no box 3 at home: its table still lists the numbers, and says to call. */
    @Test
    void printsTheTableWithoutANextBox() throws Exception {
        String page = part(new DemoPlan(2), "cartridges");
        assertTrue(page.contains("12.5 units 12.5 units You have no next box. Call us."), page);
    }

    @Test
    void headsTheDoorWithBothTimesOnceTheLastInjectionIsCalled() throws Exception {
        String door = part(new DemoPlan(3), "door");
        assertTrue(door.startsWith("Friday: 8:30 p.m. (20:30)Saturday: exactly 7:30 p.m. (19:30) "), door);
        assertTrue(door.contains("Only this one. No evening pen. No small syringe."), door);
        assertTrue(door.contains("No more injections after this, unless we call."), door);
        assertTrue(door.contains("Monday 15 March, 8:30 a.m. (08:30): be where we told you."), door);
        String start = part(new DemoPlan(3), "start");
        assertTrue(start.contains("Saturday 13 March at exactly 7:30 p.m. (19:30): your one-time syringe."), start);
        String days = part(new DemoPlan(3), "days");
        assertTrue(days.contains("We collect your eggs at 8:30 a.m. (08:30)."), days);
        assertTrue(days.contains("Clocks go forward by one hour on Sunday 14 March."), days);
    }

    @Test
    void tellsTheTwoReadySyringesApart() throws Exception {
        for (String part : List.of("trigger", "how-trigger-syringe")) {
            String page = part(new DemoPlan(3), part);
            assertTrue(page.contains("It must say choriogonadotropin alfa. It must not say ganirelix."), page);
        }
    }

    @Test
    void labelsThePartsOfADividedDose() throws Exception {
        DemoPlan divided = new DemoPlan(1);
        divided.dialMost = "150";
        String door = part(divided, "door");
        assertTrue(door.contains("Door page 1 of 3") && door.contains("Give both. Two needles."), door);
        assertTrue(door.contains("1st") && door.contains("2nd") && door.contains("The pen stops"), door);
        String page = part(divided, "cartridges");
        assertTrue(page.contains("Monday 8 March, injection 1: 12.5 to 62.5 units."), page);
        assertTrue(page.contains("Monday 8 March, injection 2: 37.5 to 87.5 units."), page);
        assertTrue(page.contains("Then give the next part: 87.5 units."), page);
    }

    @Test
    void ordersNothingBeforeTheStartIsCalled() throws Exception {
        DemoPlan waiting = new DemoPlan(1);
        waiting.startCalled = false;
        PageText page = PageText.of(PacketRulesTest.xhtml(waiting));
        for (String kind : List.of("door", "days")) {
            assertEquals(
                    0,
                    page.all("span").stream()
                            .filter(span -> span.getAttribute("class").startsWith("amount"))
                            .filter(span -> PageText.isInside(span, kind))
                            .count());
        }
        String door = plain(PageText.text(page.part("door").get(0)));
        assertTrue(door.startsWith("Nothing starts before our call."), door);
        assertTrue(door.contains("planned 187.5 units") && door.contains("Wait for our call."), door);
        String boxes = plain(PageText.text(page.part("cartridges").get(0)));
        assertTrue(boxes.contains("Only planned: Expect a new cartridge"), boxes);
        assertTrue(boxes.contains("planned: Thursday 1 April"), boxes);
    }

    @Test
    void saysWhoAnswersWhenInTheSameWordsEverywhere() throws Exception {
        PageText page = PageText.of(PacketRulesTest.xhtml(new DemoPlan(3)));
        List<String> blocks = page.all("table").stream()
                .filter(table -> table.getAttribute("class").equals("phones"))
                .map(table ->
                        plain(PageText.text(table)).replace(" Emergency", "").replace(" 911", ""))
                .toList();
        assertEquals(6, blocks.size());
        assertEquals(1, blocks.stream().distinct().count(), blocks.toString());
        assertTrue(blocks.get(0).contains("weekdays 8:00 a.m. to 4:30 p.m. (08:00 to 16:30)"), blocks.get(0));
    }
}

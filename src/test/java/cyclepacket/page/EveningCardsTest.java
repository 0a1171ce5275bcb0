package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import cyclepacket.page.EveningCardsView.AtTime;
import cyclepacket.page.EveningCardsView.Card;
import cyclepacket.page.EveningCardsView.Shot;
import cyclepacket.plan.Device;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One evening a card: the door page's amounts and hours, the pictures in order, and the way to a new cartridge. */
class EveningCardsTest {
    private static final Pattern BOX =
            Pattern.compile("<span class=\"amount(?: amount-draft)?\">(?:<span[^>]*>)?([^<]+)<");

    private static final Pattern PLANNED =
            Pattern.compile("<span class=\"planned\">planned (?:<span[^>]*>)?(\\d[^<]*)<");

    private static PacketViews views(PacketFacts facts) {
        return new PacketViews(facts, Wording.load(DemoPlan.TEMPLATES, "en"));
    }

    static List<Card> cards(DemoPlan plan) {
        return views(plan.facts()).cards().cards();
    }

    static String page(DemoPlan plan, String language) {
        return page(plan.facts(), language);
    }

    private static String page(PacketFacts facts, String language) {
        EveningCardsView view = new PacketViews(facts, Wording.load(DemoPlan.TEMPLATES, language)).cards();
        return new PageWriter(DemoPlan.TEMPLATES).write("cards.ftlh", language, view);
    }

    static Stream<String> forms() {
        return FormPackets.NAMES.stream();
    }

    private static List<String> boxes(String xhtml) {
        return found(BOX, xhtml);
    }

    private static List<String> found(Pattern pattern, String xhtml) {
        return pattern.matcher(xhtml).results().map(match -> match.group(1)).toList();
    }

    /** What the door page prints in its boxes, row by row, and then the exact minutes. */
    private static List<String> doorBoxes(DoorView door) {
        Stream<BoxedAmount> rows = door.rows().stream()
                .flatMap(row -> row.cells().stream())
                .flatMap(Optional::stream)
                .flatMap(cell -> cell.amounts().stream());
        return Stream.concat(rows, door.exact().stream().map(DoorView.Exact::amount))
                .flatMap(box -> box.text().stream())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("forms")
    void printsTheAmountsOfTheDoorPageAndNoOther(String name) {
        PacketFacts facts = FormPackets.facts(name);
        PacketView packet = views(facts).view();
        // Before the first call an amount is told as planned, in no box, as on the door page.
        Pattern shown = packet.issue().started() ? BOX : PLANNED;
        assertEquals(doorBoxes(packet.door()), found(shown, page(facts, "en")), name);
    }

    @Test
    void printsTheAmountsOfTheDemosDoorPages() {
        for (int issue = 1; issue <= 3; issue++) {
            DemoPlan plan = new DemoPlan(issue);
            assertEquals(doorBoxes(plan.view().door()), boxes(page(plan, "en")));
        }
        assertEquals(4, boxes(page(new DemoPlan(1), "en")).size(), "until the visit and no longer");
    }

    @Test
    void leavesTheAmountToTheCallOnAnEveningThatWaits() {
        List<Card> waiting = cards(new DemoPlan(1)).stream()
                .filter(card -> card.row().orElseThrow().waits())
                .toList();
        assertNotEquals(List.of(), waiting);
        waiting.forEach(card -> card.shots()
                .forEach(shot -> shot.cell()
                        .amounts()
                        .forEach(box -> assertTrue(box.text().isEmpty()))));
        String page = page(new DemoPlan(1), "en");
        assertTrue(page.split("<div class=\"wait\">").length > waiting.size(), "said on each of their pages");
    }

    @Test
    void printsNoBoxToTickBeforeTheFirstCall() {
        DemoPlan plan = new DemoPlan(1);
        plan.startCalled = false;
        String page = page(plan, "en");
        assertEquals(List.of(), boxes(page));
        assertFalse(page.contains("class=\"tick\""));
        assertTrue(page.contains("Nothing starts before our call."));
    }

    @Test
    void laysDraftAcrossEveryAmount() {
        DemoPlan plan = new DemoPlan(1);
        assertFalse(page(plan, "en").contains("across-band\""));
        plan.draft = true;
        String draft = page(plan, "en");
        assertEquals(boxes(draft).size(), draft.split("amount amount-draft").length - 1);
        assertTrue(draft.split("across-band\"").length > boxes(draft).size());
    }

    @Test
    void turnsTheHandsToTheHourThatIsPrinted() {
        assertEquals(new AtTime("8:30 p.m. (20:30)", "255", "180"), EveningCardViews.at("8:30 p.m. (20:30)"));
        assertEquals("0", EveningCardViews.at("12:00 midnight (00:00)").hourTurn());
        assertEquals("3.5", EveningCardViews.at("12:07 p.m. (12:07)").hourTurn());
        assertThrows(IllegalArgumentException.class, () -> EveningCardViews.at("in the evening"));
        cards(new DemoPlan(1))
                .forEach(card -> assertEquals("255", card.at().orElseThrow().hourTurn()));
    }

    @Test
    void primesOnTheEveningOfANewCartridgeAlone() {
        DemoPlan plan = new DemoPlan(1);
        List<Boolean> primed = cards(plan).stream()
                .map(card -> card.shots().get(0).pictures().contains("prime"))
                .toList();
        assertEquals(List.of(true, false, false), primed.subList(0, 3));
        assertFalse(primed.subList(1, primed.size()).contains(true), "a later cartridge is loaded by way of its card");
        plan.prime = Device.Prime.EACH_INJECTION;
        assertTrue(cards(plan).stream()
                .allMatch(card -> card.shots().get(0).pictures().contains("prime")));
    }

    @Test
    void ordersThePicturesAsTheMedicinesPageDoes() {
        Shot pen = cards(new DemoPlan(1)).get(0).shots().get(0);
        assertEquals(
                List.of(
                        "wash",
                        "wipe-pen",
                        "needle",
                        "caps",
                        "prime",
                        "dial",
                        "wipe-skin",
                        "pinch-pen",
                        "hold",
                        "zero",
                        "needle-off"),
                pen.pictures());
        List<Shot> both = cards(new DemoPlan(2)).get(1).shots();
        assertEquals(
                List.of("cap-off", "wipe-skin", "pinch-syringe", "hold-syringe", "sharps-syringe"),
                both.get(1).pictures());
        DemoPlan careful = new DemoPlan(1);
        careful.avoid = List.of("alcohol");
        List<String> washed = cards(careful).get(0).shots().get(0).pictures();
        assertTrue(washed.contains("wipe-skin.soap") && !washed.contains("wipe-pen"), washed.toString());
    }

    @Test
    void leadsToTheNewCartridgeCardOnMarkedEveningsAlone() {
        List<Card> cards = cards(new DemoPlan(1));
        for (Card card : cards) {
            assertEquals(
                    card.row().orElseThrow().changes().stream().anyMatch(StepPictures::isInMidDose),
                    !card.changes().isEmpty());
        }
        List<String> stages =
                cards.stream().flatMap(card -> card.changes().stream()).findFirst().orElseThrow().stages().stream()
                        .map(EveningCardsView.Stage::key)
                        .toList();
        assertEquals(List.of("card.stop", "card.check", "card.gate", "card.load", "card.finish"), stages);
        assertTrue(page(new DemoPlan(1), "en").contains("Have box 2 ready."));
    }

    @Test
    void keepsTheStagesOfTheCardForAPenThatShowsWhatIsLeft() {
        DemoPlan left = new DemoPlan(1);
        left.window = Device.Window.LEFT;
        List<EveningCardsView.Stage> stages = cards(left).stream()
                .flatMap(card -> card.changes().stream())
                .findFirst()
                .orElseThrow()
                .stages();
        assertEquals(
                List.of("card.stop", "card.gate", "card.left.give", "card.load", "card.finish"),
                stages.stream().map(EveningCardsView.Stage::key).toList());
        assertEquals("no-turn.left", stages.get(0).pictures().get(0));
        assertEquals("dial.left", stages.get(4).pictures().get(0));
    }

    @Test
    void givesTheTriggerACardOfItsOwn() {
        List<Card> cards = cards(new DemoPlan(3));
        Card trigger = cards.get(cards.size() - 1);
        assertTrue(page(new DemoPlan(3), "en").contains("At exactly"));
        assertTrue(trigger.exact().isPresent() && trigger.row().isEmpty());
        assertEquals("choriogonadotropin alfa", trigger.shots().get(0).name());
        assertEquals(
                "250\u00a0micrograms",
                trigger.shots().get(0).cell().amounts().get(0).text().orElseThrow());
        assertTrue(cards(new DemoPlan(1)).stream().allMatch(card -> card.exact().isEmpty()), "no time before the call");
    }

    @Test
    void isNotWrittenWhereNobodyAskedForIt() {
        assertEquals(Optional.empty(), new PageWriter(DemoPlan.TEMPLATES).cards(new DemoPlan(1).facts()));
    }

    /** A large evening goes over pages; whoever holds the second one alone reads which evening it is. */
    @Test
    void namesTheEveningOnEveryPageOfALargeCard() throws IOException {
        LaidOut laid =
                LaidOut.demo("DA-05120").with("patients/DA-05120.yaml", "text-size: standard", "text-size: large");
        PacketFacts facts = FormPackets.facts(laid);
        List<String> days = views(facts).cards().cards().stream()
                .map(card -> card.day().full().replace('\u00a0', ' '))
                .toList();
        byte[] pdf = PacketPrintTest.print(page(facts, "en"), "en");
        int at = 0;
        int over = 0;
        for (String page : TidyPages.texts(pdf)) {
            String text = page.replace('\u00a0', ' ');
            if (at + 1 < days.size() && text.contains(days.get(at + 1))) {
                at++;
            } else {
                over++;
            }
            // The first page of all has the heading, "Friday 9 April" on two lines.
            assertTrue(text.contains(days.get(at)) || over == 1, days.get(at) + ": " + text);
        }
        assertEquals(days.size() - 1, at, "every evening has a page");
        assertTrue(over > 10, "pages that run over: " + over);
    }
}

package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Finding;
import cyclepacket.packet.PrintedDemo;
import cyclepacket.packet.WordingCheck;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/**
 * What a machine can judge of two instruments for patient materials, on the printed packets of the demo; people judge the
 * rest on the rater sheet in DEVELOPERS.md.
 *
 * <p>PEMAT-P: Shoemaker, Wolf, Brach, PEMAT and User's Guide, AHRQ 14-0002-EF, 2013; a trait holds when it holds at least
 * 80 percent of the time. Clear Communication Index: CDC, User Guide, CS237928, 2013; a trait holds when every instance has
 * it. The limits in numbers are ours: common practice, no published source.
 */
class PematTest {
    /** A verb that begins a sentence and tells the reader to do something. */
    private static final Pattern ACTION = Pattern.compile(
            "(?:^|[.?!:)] )(?:(?:Do not|Never|Now|Then) \\p{L}+|(?:Add|Ask|Bring|"
                    + "Call|Change|Check|Choose|Come|Count|Dial|Draw|Drink|Drop|Dry|Eat|Fill|Find|Fold|Follow|Get|Give|Go|Hang|Have|"
                    + "Hold|Inject|Keep|Leave|Let|Lie|Look|Mix|Open|Order|Pinch|Press|Prime|Pull|Push|Put|Read|Rest|Roll|Say|Set|Show|"
                    + "Sit|Stand|Start|Stop|Take|Tear|Tell|Throw|Tick|Turn|Twist|Use|Wait|Warm|Wash|Watch|Wear|Wipe|Write)\\b)");

    private static final Pattern ARITHMETIC = Pattern.compile(
            "(?i)\\b(?:subtract|minus|divide[ds]? by|multipl(?:y|ied)|calculat\\w+|work (?:it )?out|add (?:them )?up|the sum of|"
                    + "the difference|percent|half of (?:it|your)|twice (?:the|your)|double (?:the|your))\\b|[×÷−]|\\d\\s*[+=]\\s*\\d");

    /** Paragraphs and points within which a part must have said what to do. */
    private static final int EARLY = 8;

    private static final Map<String, PageText> PAGES = new LinkedHashMap<>();
    private static final Map<String, List<Finding>> JUDGED = new LinkedHashMap<>();

    @BeforeAll
    static void print() throws Exception {
        WordingCheck check = new WordingCheck(Path.of(""));
        for (String plan : PrintedDemo.plans()) {
            PrintedDemo.Packet packet = PrintedDemo.of(plan);
            PageText page = PageText.of(packet.xhtml());
            // For reading on a screen the running lines of a page stand in its parts too.
            page.all("div").stream()
                    .filter(div -> has(div, "own-lines"))
                    .forEach(lines -> lines.getParentNode().removeChild(lines));
            PAGES.put(plan, page);
            JUDGED.put(plan, check.pdf(packet.pdf(), plan));
        }
        assertTrue(PAGES.size() > 8, "the packets of the demo");
    }

    /** Every part of every packet, by packet and heading. */
    private static Map<String, Element> parts() {
        Map<String, Element> parts = new LinkedHashMap<>();
        PAGES.forEach((plan, page) -> page.parts()
                .forEach(part -> parts.put(
                        plan + ": " + PageText.text(all(part, "h1").get(0)) + " (" + parts.size() + ")", part)));
        return parts;
    }

    private static List<Element> all(Element above, String name) {
        List<Element> found = new ArrayList<>();
        for (int at = 0; at < above.getElementsByTagNameNS("*", name).getLength(); at++) {
            found.add((Element) above.getElementsByTagNameNS("*", name).item(at));
        }
        return found;
    }

    private static boolean has(Element element, String styled) {
        return List.of(element.getAttribute("class").split(" ")).contains(styled);
    }

    private static List<Element> styled(Element above, String name, String styled) {
        return all(above, name).stream().filter(element -> has(element, styled)).toList();
    }

    private static String text(Element element) {
        return PageText.text(element).replace('\u00a0', ' ');
    }

    /** Parts without the trait. */
    private static List<String> without(Predicate<Element> trait) {
        return parts().entrySet().stream()
                .filter(part -> !trait.test(part.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    private static void findsNone(String... codes) {
        JUDGED.forEach((plan, found) -> assertEquals(
                List.of(),
                found.stream()
                        .filter(finding -> List.of(codes).contains(finding.code()))
                        .map(Finding::text)
                        .toList(),
                plan));
    }

    private static Stream<Element> start() {
        return PAGES.values().stream().map(page -> page.part("start").get(0));
    }

    @Test
    @DisplayName("PEMAT-P 1, Index 1 and 2: the first lines say what the packet is, for whom and from whom")
    void saysItsPurposeAtTheTop() {
        start().forEach(first -> {
            String text = text(first);
            assertEquals(1, all(first, "h1").size());
            String top = text.substring(0, Math.min(text.length(), 220));
            assertTrue(
                    top.matches(
                            "(?s)Start here.*Use this packet to (?:take and )?inject at home.*Only for .+ from .+\\..*"),
                    top);
        });
    }

    @Test
    @DisplayName("PEMAT-P 3 and 4: everyday words; a hard word stands with the words that explain it")
    void usesEverydayWords() {
        findsNone("WORDING-TERM");
    }

    @Test
    @DisplayName("PEMAT-P 5, Index 6: at least 80 percent of the sentences are active")
    void speaksInTheActiveVoice() {
        findsNone("WORDING-PASSIVE-SHARE");
    }

    @Test
    @DisplayName("PEMAT-P 6: numbers are clear: digits, no error-prone form, no implied time")
    void writesClearNumbers() {
        findsNone("WORDING-DESIGNATION", "WORDING-NUMBER-WORD", "WORDING-INTERVAL");
    }

    @Test
    @DisplayName("PEMAT-P 7 and 24, Index 17: the reader never calculates")
    void asksForNoArithmetic() {
        PAGES.forEach((plan, page) -> {
            String text = page.text().replace('\u00a0', ' ');
            assertFalse(
                    ARITHMETIC.matcher(text).find(),
                    () -> plan
                            + ARITHMETIC
                                    .matcher(text)
                                    .results()
                                    .map(hit -> hit.group())
                                    .toList());
        });
        assertTrue(ARITHMETIC.matcher("Subtract it from 225.").find()
                && ARITHMETIC.matcher("100 + 25").find());
    }

    @Test
    @DisplayName("PEMAT-P 8, Index 8: short chunks: no list of more than seven")
    void keepsListsShort() {
        assertEquals(
                List.of(),
                without(part -> Stream.concat(all(part, "ol").stream(), all(part, "ul").stream())
                        .allMatch(list -> all(list, "li").size() <= 7)));
        assertTrue(
                parts().values().stream()
                                .mapToInt(part -> all(part, "li").size())
                                .sum()
                        > 500,
                "lists are used");
    }

    @Test
    @DisplayName("PEMAT-P 9, Index 9: every page's part has a heading of its own that tells what it is about")
    void headsEveryPart() {
        assertEquals(List.of(), without(part -> all(part, "h1").size() == 1));
        assertEquals(
                List.of(),
                without(part -> Stream.of("h1", "h2", "h3")
                        .flatMap(name -> all(part, name).stream())
                        .map(PematTest::text)
                        .noneMatch(head -> head.isBlank()
                                || head.matches("(?i)(?:introduction|general|information|notes?|other|misc.*)"))));
    }

    @Test
    @DisplayName("PEMAT-P 10, Index 10: in the order of use, the most important first")
    void ordersBySteps() {
        PAGES.forEach((plan, page) -> {
            List<String> ids =
                    page.parts().stream().map(part -> part.getAttribute("id")).toList();
            assertEquals("start", ids.get(0), plan);
            TreeSet<Integer> places = new TreeSet<>();
            List<Integer> inOrder = new ArrayList<>();
            for (String id : List.of("start", "door", "days", "calls", "trouble", "log")) {
                inOrder.add(ids.indexOf(id));
                places.add(ids.indexOf(id));
            }
            assertFalse(inOrder.contains(-1), plan + ids);
            assertEquals(List.copyOf(places), inOrder, plan + ids);
        });
        assertEquals(
                List.of(),
                without(part -> !part.getAttribute("id").startsWith("how-")
                        || text(part).matches("(?s).*Gather.*Prepare.*(?:Give|Take).*After.*")));
        assertEquals(
                List.of(),
                without(part -> !part.getAttribute("id").equals("calls")
                        || text(part).matches("(?s).*now.*within the hour.*same day.*until we are open.*")));
    }

    @Test
    @DisplayName("PEMAT-P 11, Index 3: the first page says the main points in a frame, three at most")
    void summarisesOnTheFirstPage() {
        start().forEach(first -> {
            List<Element> frames = styled(first, "div", "keep");
            assertEquals(1, frames.size());
            int points = all(frames.get(0), "li").size();
            assertTrue(points >= 1 && points <= 3, points + " points");
        });
    }

    @Test
    @DisplayName("PEMAT-P 12: cautions stand out, in bold or in a frame")
    void showsCautions() {
        for (String id : List.of("start", "calls", "card", "trigger", "changed")) {
            assertEquals(
                    List.of(),
                    without(part -> !part.getAttribute("id").equals(id)
                            || !styled(part, "div", "panel").isEmpty()
                            || !all(part, "strong").isEmpty()));
        }
    }

    @Test
    @DisplayName(
            "PEMAT-P 15 and 26: a picture where a step is hard: whatever is injected, the spots, the new-cartridge card,"
                    + " the signs that need help now, the trigger")
    void drawsTheHardSteps() {
        assertEquals(List.of(), without(part -> {
            boolean isInjected =
                    part.getAttribute("id").startsWith("how-") && text(part).contains("needle");
            boolean isHard = isInjected
                    || List.of("sites", "calls", "trigger").contains(part.getAttribute("id"))
                    || part.getAttribute("id").matches("card(?:-\\d)?");
            return !isHard || !all(part, "svg").isEmpty();
        }));
        for (String said : List.of(
                "Do not turn the dial.",
                "Put the cartridge of the next box in",
                "Dial the number you wrote.",
                "The plunger is in the middle.",
                "The plunger is at the end.")) {
            assertEquals(
                    List.of(),
                    without(part -> !part.getAttribute("class").contains("card-owed")
                            || isDrawn(part, said)
                            || text(part).startsWith("Something else? Turn to side 2. New-pen card")));
        }
        for (String sign : List.of("chest", "face or throat", "head", "belly")) {
            assertEquals(List.of(), without(part -> !part.getAttribute("id").equals("calls") || isDrawn(part, sign)));
        }
        assertEquals(
                List.of(),
                without(part -> !part.getAttribute("class").contains("form-syringe")
                        || isDrawn(part, "Push the needle straight in") && isDrawn(part, "Drop it in at once.")));
        assertEquals(
                List.of(),
                without(part -> !part.getAttribute("class").matches("medicine vial.*|.* vial.*")
                        || isDrawn(part, "into a hard box")
                                && (isDrawn(part, "Draw back") || isDrawn(part, "Put the liquid in."))));
    }

    /** Whether a picture of the part says these words. */
    private static boolean isDrawn(Element part, String words) {
        return all(part, "svg").stream()
                .anyMatch(picture -> picture.getAttribute("alt").contains(words));
    }

    @Test
    @DisplayName("PEMAT-P 17: every picture says in words what it shows")
    void saysWhatEveryPictureShows() {
        List<Element> pictures = PAGES.values().stream()
                .flatMap(page -> page.all("svg").stream())
                .toList();
        assertTrue(pictures.size() > 20, "pictures: " + pictures.size());
        pictures.forEach(
                picture -> assertTrue(picture.getAttribute("alt").split(" ").length >= 3, picture.getAttribute("alt")));
    }

    @Test
    @DisplayName("PEMAT-P 19: tables are simple and their heads short: most of three words or fewer")
    void headsTablesShortly() {
        List<Integer> lengths = PAGES.values().stream()
                .flatMap(page -> page.all("th").stream())
                .filter(head -> head.getAttribute("scope").equals("col"))
                .map(head -> text(head).split(" ").length)
                .toList();
        long few = lengths.stream().filter(words -> words <= 3).count();
        assertTrue(few >= 0.8 * lengths.size(), few + " of " + lengths.size());
        PAGES.values()
                .forEach(page -> page.all("table")
                        .forEach(table -> assertTrue(
                                all(table, "table").isEmpty()
                                        && !all(table, "td").isEmpty(),
                                "a table in a table")));
    }

    @Test
    @DisplayName("PEMAT-P 20, Index 5, 12 and 14: every part tells the reader to do something, early")
    void asksForAction() {
        assertEquals(
                List.of(),
                without(part -> Stream.concat(all(part, "p").stream(), all(part, "li").stream())
                        .map(PematTest::text)
                        .filter(text -> !text.isBlank())
                        .limit(EARLY)
                        .anyMatch(text -> ACTION.matcher(text).find())));
    }

    @Test
    @DisplayName("PEMAT-P 21: speaks to the reader: you and your, or a verb first, in most sentences")
    void speaksToTheReader() {
        PAGES.forEach((plan, page) -> {
            List<String> sentences = page.running().stream()
                    .flatMap(text -> Stream.of(text.replace('\u00a0', ' ').split("(?<=[.?!]) ")))
                    .filter(sentence -> sentence.contains(" ") && sentence.matches("(?s).*[.?!]"))
                    .toList();
            long spoken = sentences.stream()
                    .filter(sentence -> ACTION.matcher(sentence).find()
                            || sentence.matches("(?is).*\\b(?:you|your|yours|we|us|my|i)\\b.*"))
                    .count();
            assertTrue(spoken >= 0.6 * sentences.size(), plan + ": " + spoken + " of " + sentences.size());
        });
    }

    @Test
    @DisplayName("PEMAT-P 22: actions are broken into numbered steps")
    void breaksActionsIntoSteps() {
        assertEquals(
                List.of(),
                without(part -> !(part.getAttribute("id").startsWith("how-")
                                || part.getAttribute("id").startsWith("card"))
                        || styled(part, "ol", "steps").stream()
                                .anyMatch(list -> all(list, "li").size() > 1)));
    }

    @Test
    @DisplayName("PEMAT-P 23: a tool in the hand: boxes to tick on the door page, lines to write on in the log")
    void givesATool() {
        PAGES.forEach((plan, page) -> {
            assertFalse(styled(page.part("door").get(0), "span", "tick").isEmpty(), plan);
            assertTrue(all(page.part("log").get(0), "tr").size() > 3, plan);
        });
    }

    @Test
    @DisplayName("PEMAT-P 25: each table that tells what to do says how to use it")
    void saysHowToUseATable() {
        assertEquals(
                List.of(),
                without(part -> !part.getAttribute("id").startsWith("cartridges")
                        || (text(part).contains("box number") || text(part).contains("the number of your box"))
                                && (!text(part).contains("If it stopped on")
                                        || text(part).contains("Find "))));
        assertEquals(
                List.of(),
                without(part -> !part.getAttribute("id").startsWith("door")
                        || text(part).contains("Tick the box")));
    }
}

package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Finding;
import cyclepacket.finding.FindingText;
import cyclepacket.finding.Place;
import cyclepacket.finding.Severity;
import cyclepacket.plan.Device;
import cyclepacket.plan.HouseRules;
import cyclepacket.wording.GradeCheck;
import cyclepacket.wording.LanguageRules;
import cyclepacket.wording.Passage;
import cyclepacket.wording.TextCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** What holds on every packet, whatever the plan: wording, places of amounts, structure. */
class PacketRulesTest {
    private static final LanguageRules ENGLISH =
            WordingFolder.of(DemoPlan.TEMPLATES, "en").rules();
    private static final PageWriter WRITER = new PageWriter(DemoPlan.TEMPLATES);
    private static final List<String> AMOUNTS = List.of("187.5", "212.5", "0.25", "250\u00a0micrograms");
    private static final Map<String, String> WRITTEN = new TreeMap<>();

    static String xhtml(DemoPlan plan) {
        return WRITER.packet(plan.view());
    }

    private static PageText page(int issue, Consumer<DemoPlan> change) throws Exception {
        DemoPlan plan = new DemoPlan(issue);
        change.accept(plan);
        return PageText.of(xhtml(plan));
    }

    /** Every kind of packet the templates can make. */
    static Stream<String> packets() {
        return Stream.concat(packetsByName().keySet().stream(), FormPackets.NAMES.stream());
    }

    /** Those of the first demo patient, whose name and amounts are known. */
    static Stream<String> ownPackets() {
        return packetsByName().keySet().stream();
    }

    private static Map<String, DemoPlan> packetsByName() {
        Map<String, DemoPlan> all = new TreeMap<>();
        for (int issue = 1; issue <= 3; issue++) {
            all.put("issue " + issue, new DemoPlan(issue));
        }
        all.put("draft", with(3, plan -> plan.draft = true));
        all.put("not started", with(1, plan -> plan.startCalled = false));
        all.put("left", with(1, plan -> plan.window = Device.Window.LEFT));
        all.put("divided", with(1, plan -> plan.dialMost = "150"));
        all.put("soap, each time", with(2, plan -> {
            plan.swab = HouseRules.SwabSkin.SOAP_AND_WATER;
            plan.prime = Device.Prime.EACH_INJECTION;
        }));
        all.put("avoids", with(2, plan -> plan.avoid = List.of("latex", "alcohol")));
        all.put("last day", with(3, plan -> plan.preparedOn = Optional.of(DemoPlan.march(13))));
        all.put("over", with(3, plan -> plan.preparedOn = Optional.of(DemoPlan.march(14))));
        all.put("far away", with(3, plan -> plan.patientZone = java.time.ZoneId.of("Europe/London")));
        return all;
    }

    private static DemoPlan with(int issue, Consumer<DemoPlan> change) {
        DemoPlan plan = new DemoPlan(issue);
        change.accept(plan);
        return plan;
    }

    private static PageText named(String name) throws Exception {
        return PageText.of(WRITTEN.computeIfAbsent(
                name,
                key -> FormPackets.NAMES.contains(key)
                        ? WRITER.packet(FormPackets.view(key))
                        : xhtml(packetsByName().get(key))));
    }

    /**
     * The whole page by every rule of plain English. Grade 6 or below: AMA and NIH advice for patient materials, as cited
     * by Am Fam Physician 2015;92(2):118. Designations: the Joint Commission and ISMP lists.
     */
    @ParameterizedTest
    @MethodSource("packets")
    void speaksPlainly(String name) throws Exception {
        Place here = new Place(name, "", 1, 1, "");
        List<Passage> passages = new ArrayList<>();
        named(name).running().forEach(text -> passages.add(new Passage(text, true, words -> here)));
        passages.add(new Passage(named(name).text(), false, words -> here));
        List<Finding> found = new ArrayList<>(TextCheck.of(passages, ENGLISH, false));
        found.addAll(GradeCheck.of(passages, ENGLISH, here));
        assertTrue(found.stream().anyMatch(finding -> finding.code().equals("WORDING-GRADE")));
        found.removeIf(finding -> finding.severity() == Severity.NOTE);
        assertEquals("", FindingText.print(found));
    }

    @ParameterizedTest
    @MethodSource("packets")
    void writesEveryInstructionAsASentence(String name) throws Exception {
        PageText page = named(name);
        for (String element : List.of("p", "li")) {
            for (Element text : page.all(element)) {
                if (PageText.isInside(
                        text, "head", "foot", "door-head", "door-foot", "write", "when", "contents", "banner")) {
                    continue;
                }
                String read = PageText.text(text);
                assertTrue(
                        read.isEmpty() || ".?!:".indexOf(read.charAt(read.length() - 1)) >= 0 || isLabel(text), read);
            }
        }
    }

    /** A line that ends in a box to fill or tick, or lists counts. */
    private static boolean isLabel(Element text) {
        return text.getElementsByTagName("span").getLength() > 0 || PageText.isInside(text, "count", "item");
    }

    @ParameterizedTest
    @MethodSource("ownPackets")
    void showsAmountsOfThePlanOnFourKindsOfPageOnly(String name) throws Exception {
        for (Element part : named(name).parts()) {
            String kind = part.getAttribute("class");
            if (kind.contains("door") || kind.contains("days") || kind.contains("trigger")) {
                continue;
            }
            String text = PageText.text(part);
            int lookUp = kind.contains("cartridges") ? text.indexOf("true only while") : -1;
            String rest = lookUp < 0 ? text : text.substring(0, lookUp);
            for (String amount : AMOUNTS) {
                assertFalse(rest.contains(amount), amount + " stands on " + kind);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("packets")
    void neverBreaksAnAmountFromItsUnit(String name) throws Exception {
        PageText page = named(name);
        assertEquals(
                List.of(),
                Pattern.compile("\\d (?:units?|mg|micrograms?|mm|cm)\\b")
                        .matcher(page.text())
                        .results()
                        .map(broken -> page.text().substring(broken.start() - 20, broken.end()))
                        .toList());
        for (Element span : page.all("span")) {
            if (span.getAttribute("class").equals("amount")) {
                assertTrue(PageText.text(span).contains("\u00a0"), PageText.text(span));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("packets")
    void forecastsNeverPromise(String name) throws Exception {
        assertFalse(Pattern.compile("(?i)\\bcertain(ly)?\\b")
                .matcher(named(name).text())
                .find());
    }

    @ParameterizedTest
    @MethodSource("ownPackets")
    void keepsTheDoorPageDiscreet(String name) throws Exception {
        PageText page = named(name);
        Element door = page.part("door").get(0);
        Element foot = page.all("div").stream()
                .filter(div -> div.getAttribute("class").equals("door-foot"))
                .findFirst()
                .orElseThrow();
        Element head = page.all("div").stream()
                .filter(div -> div.getAttribute("class").equals("door-head"))
                .findFirst()
                .orElseThrow();
        String seen = PageText.text(door) + PageText.text(head) + PageText.text(foot);
        for (String hidden : List.of(
                "SM-04417",
                "Saltmarsh",
                "Hollis",
                "Wren",
                "1990",
                "7730418",
                "follitropin",
                "ganirelix",
                "gonadotropin",
                "rigger",
                "egg",
                "fertility")) {
            assertFalse(
                    seen.toLowerCase(java.util.Locale.ROOT).contains(hidden.toLowerCase(java.util.Locale.ROOT)),
                    hidden);
        }
        assertTrue(PageText.text(foot).matches("WH, issue \\d, code [A-Z0-9-]+"), PageText.text(foot));
        assertTrue(seen.contains("+1\u00a0207\u00a0555\u00a00177"), "the number to call");
    }

    @ParameterizedTest
    @MethodSource("ownPackets")
    void namesThePatientTwiceAndTheIssueOnEveryOtherPage(String name) throws Exception {
        PageText page = named(name);
        String head = PageText.text(page.all("div").get(0));
        assertTrue(head.contains("Wren Hollis") && head.contains("born 17\u00a0April\u00a01990"), head);
        String foot = PageText.text(page.all("div").get(1));
        assertTrue(foot.contains("Plan SM-04417, issue ") && foot.contains(", code ") && foot.contains("Page"), foot);
    }

    @ParameterizedTest
    @MethodSource("packets")
    void isBuiltForReadersThatSpeak(String name) throws Exception {
        PageText page = named(name);
        int level = 0;
        for (Element element : page.all("*")) {
            String tag = element.getLocalName();
            if (tag.matches("h[1-6]")) {
                int next = tag.charAt(1) - '0';
                assertTrue(next <= level + 1, "from h" + level + " to " + tag + ": " + PageText.text(element));
                level = next;
            }
        }
        page.all("th").forEach(th -> assertFalse(th.getAttribute("scope").isEmpty(), PageText.text(th)));
        page.all("svg").forEach(svg -> assertFalse(svg.getAttribute("alt").isBlank()));
        page.all("ol").forEach(ol -> assertTrue(ol.getElementsByTagName("li").getLength() <= 7, PageText.text(ol)));
        page.all("li")
                .forEach(li -> assertTrue(
                        List.of("ol", "ul").contains(li.getParentNode().getNodeName())));
    }

    @ParameterizedTest
    @MethodSource("packets")
    void leavesDrawnWindowsEmptyAndExamplesOutOfThePlan(String name) throws Exception {
        PageText page = named(name);
        // The scale of a syringe, the order of vials and the spots of a map are numbers; a window never is.
        assertEquals(
                List.of(),
                page.all("text").stream()
                        .filter(text -> !PageText.isInside(text, "sites", "spots", "vial"))
                        .toList());
        for (Element example : page.all("p")) {
            if (example.getAttribute("class").equals("example")) {
                String number = PageText.text(example)
                        .replaceAll("[^0-9.]+", " ")
                        .trim()
                        .split(" ")[0];
                String rest = page.text().replace(PageText.text(example), "");
                assertFalse(rest.matches("(?s).*(?<![\\d.])" + Pattern.quote(number) + "\u00a0units.*"), number);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("packets")
    void carriesEverythingItNeeds(String name) throws Exception {
        PageText page = named(name);
        assertEquals(List.of(), page.all("link"));
        assertEquals(List.of(), page.all("img"));
        page.all("a").forEach(link -> assertTrue(link.getAttribute("href").startsWith("#")));
        for (Element link : page.all("a")) {
            String target = link.getAttribute("href").substring(1);
            assertTrue(
                    page.all("div").stream()
                            .anyMatch(div -> div.getAttribute("id").equals(target)),
                    target);
        }
    }

    @Test
    void marksADraftOnEveryPageAndAcrossTheAmounts() throws Exception {
        PageText draft = page(3, plan -> plan.draft = true);
        String mark = "DRAFT - NOT FOR THE PATIENT";
        assertTrue(PageText.text(draft.all("div").get(0)).startsWith(mark));
        for (String part : List.of("door", "trigger")) {
            assertTrue(PageText.text(draft.part(part).get(0)).contains(mark), part);
        }
        assertFalse(page(3, plan -> {}).text().contains("DRAFT"));
    }

    @Test
    void saysThatNothingStartsBeforeTheCall() throws Exception {
        PageText waiting = page(1, plan -> plan.startCalled = false);
        for (String running : List.of("head", "door-head")) {
            Element head = waiting.all("div").stream()
                    .filter(div -> div.getAttribute("class").equals(running))
                    .findFirst()
                    .orElseThrow();
            assertTrue(PageText.text(head).contains("Nothing starts before our call."), running);
        }
        assertFalse(page(1, plan -> {}).text().contains("Nothing starts before our call."));
    }

    @Test
    void givesNoTimeBeforeTheTriggerIsCalled() throws Exception {
        for (int issue = 1; issue <= 2; issue++) {
            PageText page = page(issue, plan -> {});
            String trigger = PageText.text(page.part("trigger").get(0));
            assertTrue(trigger.contains("We will call you with the day and time."), trigger);
            for (Element phones : page.all("table")) {
                if (phones.getAttribute("class").equals("phones")) {
                    // The hours of the clinic's lines are no time to inject.
                    trigger = trigger.replace(PageText.text(phones), "");
                }
            }
            assertFalse(
                    Pattern.compile("\\d:\\d\\d|March|p\\.m\\.|a\\.m\\.")
                            .matcher(trigger)
                            .find(),
                    trigger);
        }
    }
}

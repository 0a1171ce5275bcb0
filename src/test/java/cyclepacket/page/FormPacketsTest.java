package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Medicine;
import cyclepacket.safety.SafetyCheck;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** What the packets of the other forms and protocols must say and must not say. */
class FormPacketsTest {
    private static final PageWriter WRITER = new PageWriter(DemoPlan.TEMPLATES);

    static Stream<String> names() {
        return FormPackets.NAMES.stream();
    }

    private static PageText page(String name) throws Exception {
        return PageText.of(WRITER.packet(FormPackets.view(name)));
    }

    /** Text of one part, by its id. */
    private static String part(String name, String id) throws Exception {
        return page(name).all("div").stream()
                .filter(div -> div.getAttribute("id").equals(id))
                .map(PageText::text)
                .findFirst()
                .orElseThrow()
                .replace('\u00a0', ' ');
    }

    @ParameterizedTest
    @MethodSource("names")
    void hasNoStopInAnyPlanOfAForm(String name) {
        PacketFacts facts = FormPackets.facts(name);
        List<String> stops = SafetyCheck.of(facts.files(), facts.course(), facts.ledger(), facts.supply()).stream()
                .filter(Finding::isStop)
                .map(finding -> finding.code() + " " + finding.text())
                .toList();
        assertEquals(List.of(), stops);
    }

    @ParameterizedTest
    @MethodSource("names")
    void givesEveryMedicineAPage(String name) throws Exception {
        List<String> ids = page(name).all("div").stream()
                .map(div -> div.getAttribute("id"))
                .toList();
        for (Medicine medicine : FormPackets.facts(name).files().medicines().values()) {
            assertTrue(ids.contains("how-" + medicine.id()), medicine.id());
        }
    }

    @Test
    void showsEveryProtocolOfTheDemo() throws IOException {
        TreeSet<String> shown = new TreeSet<>(List.of("antagonist-fixed"));
        for (String name : FormPackets.NAMES) {
            shown.add(FormPackets.facts(name).files().protocol().id());
        }
        TreeSet<String> files = new TreeSet<>();
        try (Stream<Path> all = Files.list(Path.of("plans/protocols"))) {
            all.forEach(file -> files.add(file.getFileName().toString().replace(".yaml", "")));
        }
        assertEquals(files, shown);
    }

    /** A mark is never followed by a unit of medicine, and no page of a vial counts units. */
    @ParameterizedTest
    @MethodSource("names")
    void neverCallsAMarkUnits(String name) throws Exception {
        for (Element part : page(name).all("div")) {
            String kind = " " + part.getAttribute("class") + " ";
            if (kind.contains(" vial ")) {
                String text = PageText.text(part);
                assertFalse(text.matches("(?s).*\\bmark (units|mg|mcg|micrograms)\\b.*"), text);
                assertTrue(
                        text.contains("Never count marks as units.")
                                || text.contains("Wait for our call. We tell you the mark. Do not draw it up before."),
                        text);
            }
        }
    }

    /** The strength on a label is the product's; everything else with a unit is the plan's. */
    @ParameterizedTest
    @MethodSource("names")
    void showsAmountsOnFourKindsOfPageOnly(String name) throws Exception {
        for (Element part : page(name).all("div")) {
            String kind = " " + part.getAttribute("class") + " ";
            if (kind.contains(" medicine ") || kind.contains(" sites ")) {
                String text = PageText.text(part).replace('\u00a0', ' ');
                String rest = text.replaceAll("must say [0-9.,]+ (units|mg|micrograms) in", "");
                assertFalse(rest.matches("(?s).*[0-9] (units|mg|micrograms)\\b.*"), rest);
            }
        }
    }

    @Test
    void speaksOfNoPregnancyInEggFreezing() throws Exception {
        String text = page("EF-07318-issue-2").text().toLowerCase(Locale.ROOT);
        for (String word : List.of("pregnan", "womb", "embryo", "transfer", "partner", "baby")) {
            assertFalse(text.contains(word), word);
        }
    }

    @Test
    void printsBothPartsOfATriggerWithTheirOwnTime() throws Exception {
        String trigger = part("EF-07318-issue-2", "trigger");
        assertTrue(trigger.contains("The trigger has 2 parts."), trigger);
        assertTrue(trigger.contains("Wednesday 12 May"), trigger);
        assertTrue(trigger.contains("Thursday 13 May"), trigger);
        assertTrue(trigger.contains("80 mark"), trigger);
        assertTrue(trigger.contains("40 mark"), trigger);
        assertFalse(trigger.contains("There is no second dose"), trigger);
    }

    /** Two medicines, six hours apart, when the trigger was not called: no time at all. */
    @Test
    void printsNoTimeBeforeTheCall() throws Exception {
        String trigger = part("two-medicine-trigger", "trigger");
        assertTrue(trigger.contains("We will call you with the day and time."), trigger);
        assertFalse(trigger.contains("March"), trigger);
        assertFalse(part("two-medicine-trigger", "sites").contains("one-time"), "no spot before the call");
    }

    @Test
    void saysNotYetForWhatWaitsForACall() throws Exception {
        assertTrue(part("DA-05120", "door").contains("Not yet: small syringe."));
        assertTrue(part("DA-05120", "days").contains("Not yet: small syringe."));
        assertTrue(part("DA-05120", "how-antagonist-syringe").contains("Not yet. Wait for our call."));
    }

    @Test
    void saysVialsAndMarkBesideTheAmountOnTheDoor() throws Exception {
        String door = part("DA-05120", "door");
        assertTrue(door.contains("112.5 units 2 vials, to the 0.75 mL mark"), door);
    }

    @Test
    void listsPatchDaysAndTheStopRule() throws Exception {
        String patch = part("FT-08440-issue-2", "how-estradiol-patch");
        assertTrue(patch.contains("Wednesday 16 June"), patch);
        assertTrue(patch.contains("Saturday 19 June"), patch);
        assertFalse(patch.contains("Thursday 17 June"), patch);
        String oil = part("FT-08440-issue-2", "how-progesterone-oil");
        assertTrue(oil.contains("Go on until we tell you to stop. Go on also if you bleed."), oil);
        assertTrue(oil.contains("One vial is enough for 9 times."), oil);
    }

    @Test
    void saysThatAWholePenIsNeverInjected() throws Exception {
        String pen = part("EF-07318-issue-2", "how-fsh-pen-mcg");
        assertTrue(pen.contains("Never inject the whole pen."), pen);
        assertTrue(pen.contains("thrown away whole"), pen);
    }

    @Test
    void drawsOneVialForEachInTheOrderOfMixing() throws Exception {
        List<String> numbers = new ArrayList<>();
        for (Element svg : page("LM-06233-issue-2").all("svg")) {
            if (svg.getAttribute("alt").contains("powder vials")) {
                for (int each = 0; each < svg.getElementsByTagName("text").getLength(); each++) {
                    numbers.add(svg.getElementsByTagName("text").item(each).getTextContent());
                }
            }
        }
        assertEquals(List.of("1", "2", "3"), numbers);
    }

    @Test
    void putsWhatIsTakenBeforeWhatIsInjected() throws Exception {
        String sites = part("DA-05120", "sites");
        assertTrue(sites.indexOf("evening pen") < sites.indexOf("powder vial"), sites);
        String frozen = part("FT-08440-issue-2", "sites");
        assertTrue(frozen.indexOf("tablet") < frozen.indexOf("oil vial"), frozen);
    }
}

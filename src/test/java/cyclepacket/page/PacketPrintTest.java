package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Checked;
import cyclepacket.pdf.Attachment;
import cyclepacket.pdf.Conformity;
import cyclepacket.pdf.DocumentFacts;
import cyclepacket.pdf.Sheet;
import cyclepacket.pdf.Typesetter;
import cyclepacket.plan.Device;
import cyclepacket.plan.Plan;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The packet as it comes off the printer: sizes, fullness of pages, and the published rules for PDF. */
class PacketPrintTest {
    private static final List<Attachment> NONE = List.of();

    static Stream<DemoPlan> prints() {
        List<DemoPlan> prints = new ArrayList<>();
        for (int issue = 1; issue <= 3; issue++) {
            for (Plan.Paper paper : Plan.Paper.values()) {
                for (Plan.TextSize size : Plan.TextSize.values()) {
                    DemoPlan plan = new DemoPlan(issue);
                    plan.paper = paper;
                    plan.textSize = size;
                    plan.draft = issue < 3;
                    prints.add(plan);
                }
            }
        }
        DemoPlan last = new DemoPlan(3);
        last.preparedOn = Optional.of(DemoPlan.march(13));
        prints.add(last);
        return prints.stream();
    }

    private static byte[] print(DemoPlan plan) throws IOException {
        return print(PacketRulesTest.xhtml(plan), "en");
    }

    static byte[] print(String xhtml, String language) throws IOException {
        DocumentFacts facts = new DocumentFacts("A packet", "A packet for a test", language, DemoPlan.march(3), "test");
        Checked<byte[]> pdf = Typesetter.open(DemoPlan.TEMPLATES).typeset(new Sheet(xhtml, facts, NONE));
        assertEquals(List.of(), pdf.findings());
        return pdf.value().orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("prints")
    void printsPagesThatAreFullAndClear(DemoPlan plan) throws IOException {
        TidyPages.check(name(plan), print(plan), plan.textSize);
    }

    private static String name(DemoPlan plan) {
        return "issue " + plan.issue + ", " + plan.paper + ", " + plan.textSize;
    }

    /** A page for the door is one page; in large print it is as many as it says of itself. */
    @ParameterizedTest
    @MethodSource("prints")
    void printsAsManyDoorPagesAsItSays(DemoPlan plan) throws IOException {
        List<String> doors = TidyPages.texts(print(plan)).stream()
                .filter(page -> page.contains("WH, issue"))
                .toList();
        for (String door : doors) {
            Matcher of = Pattern.compile("Door page (\\d+) of (\\d+)").matcher(door);
            int said = of.find() ? Integer.parseInt(of.group(2)) : 1;
            assertEquals(said, doors.size(), name(plan) + ": " + door);
        }
        assertTrue(plan.textSize == Plan.TextSize.LARGE || doors.size() == 1, name(plan));
    }

    /**
     * A card that is read at night must not run over the leaf: one page, or in large print three that break between
     * stages; every number of a stage then stands with its last word.
     */
    @ParameterizedTest
    @MethodSource("cards")
    void keepsTheCardOnItsPage(DemoPlan plan) throws IOException {
        byte[] pdf = print(plan);
        TidyPages.check(name(plan), pdf, plan.textSize);
        List<String> pages = TidyPages.texts(pdf);
        int first = indexOf(pages, "Turn to side 2.");
        int second = indexOf(pages, "New-cartridge card, side 2");
        List<String> leaves = pages.subList(first, second);
        int most = plan.textSize == Plan.TextSize.LARGE ? 3 : 1;
        assertEquals(most, leaves.size(), name(plan) + leaves);
        leaves.forEach(leaf -> assertTrue(leaf.contains("New-cartridge card"), leaf));
    }

    private static int indexOf(List<String> pages, String words) {
        for (int index = 0; index < pages.size(); index++) {
            if (pages.get(index).contains(words)) {
                return index;
            }
        }
        throw new AssertionError(words + " stands on no page");
    }

    static Stream<DemoPlan> cards() {
        List<DemoPlan> cards = new ArrayList<>();
        for (Plan.Paper paper : Plan.Paper.values()) {
            for (Plan.TextSize size : Plan.TextSize.values()) {
                for (Device.Window window : Device.Window.values()) {
                    for (String most : List.of("400", "150")) {
                        DemoPlan plan = new DemoPlan(1);
                        plan.paper = paper;
                        plan.textSize = size;
                        plan.window = window;
                        plan.dialMost = most;
                        plan.draft = true;
                        plan.startCalled = false;
                        cards.add(plan);
                    }
                }
            }
        }
        return cards.stream();
    }

    @Test
    void keepsThePublishedRulesForPdf() throws IOException {
        Conformity.assertConforms(print(new DemoPlan(1)));
        DemoPlan draft = new DemoPlan(3);
        draft.draft = true;
        draft.textSize = Plan.TextSize.LARGE;
        Conformity.assertConforms(print(draft));
    }
}

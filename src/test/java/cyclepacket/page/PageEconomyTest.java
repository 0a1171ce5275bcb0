package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import cyclepacket.plan.Plan;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/** How many pages a usual packet takes: one pen, one ready syringe and a trigger. Common practice, no published source. */
class PageEconomyTest {
    private static final PageWriter WRITER = new PageWriter(DemoPlan.TEMPLATES);

    private static PacketFacts facts(String plan, String paper, String size) throws IOException {
        LaidOut laid = LaidOut.demo(plan);
        String file = "patients/" + plan + ".yaml";
        laid.with(file, "paper: letter", "paper: " + paper).with(file, "text-size: standard", "text-size: " + size);
        return FormPackets.facts(laid);
    }

    /** A later issue has one page more: what changed. */
    @ParameterizedTest
    @CsvSource({
        "SM-04417, letter, en, 16",
        "SM-04417, A4, en, 16",
        "SM-04417, letter, es, 16",
        "SM-04417, A4, es, 16",
        "SM-04417-issue-2, letter, en, 17",
        "SM-04417-issue-2, A4, es, 17",
        "SM-04417-issue-3, letter, en, 16",
        "SM-04417-issue-3, A4, es, 16"
    })
    void printsAUsualPacketOnFewPages(String plan, String paper, String language, int most) throws IOException {
        String xhtml = WRITER.packet(facts(plan, paper, "standard"), language, !language.equals("en"));
        byte[] pdf = PacketPrintTest.print(xhtml, language);
        List<String> pages = TidyPages.texts(pdf);
        assertTrue(pages.size() <= most, plan + " " + paper + " " + language + ": " + pages.size() + " pages");
        TidyPages.check(plan + " " + paper + " " + language, pdf, Plan.TextSize.STANDARD);
        String last = language.equals("en") ? "Follow them until we call you." : "Sígalas hasta que le llamemos.";
        assertTrue(pages.get(0).contains(last), "the plan in short is one page");
    }

    /** PEMAT-P item 11 (AHRQ, 2014): a summary. At most three things to keep in mind: Am Fam Physician 2015;92(2):118. */
    @ParameterizedTest
    @CsvSource({"SM-04417, en", "SM-04417-issue-3, es", "SM-04417-issue-2, en"})
    void beginsWithThePlanInShort(String plan, String language) throws Exception {
        PacketFacts facts = facts(plan, "letter", "standard");
        PageText page = PageText.of(WRITER.packet(facts, language, !language.equals("en")));
        String start = PageText.text(page.part("start").get(0));
        assertTrue(start.contains("Wren Hollis") && start.contains("Saltmarsh"), start);
        assertTrue(start.contains("+1\u00a0207\u00a0555\u00a00142") && start.contains("911"), start);
        // A first page with two times and what it replaces has no room for the list of medicines.
        facts.files()
                .medicines()
                .values()
                .forEach(medicine -> assertEquals(
                        !facts.course().isTriggerCalled(), start.contains(medicine.name()), medicine.name()));
        long toKeep = page.all("li").stream()
                .filter(item -> PageText.isInside(item, "keep"))
                .count();
        assertTrue(toKeep > 0 && toKeep <= 3, "things to keep in mind: " + toKeep);
        List<String> listed = page.all("a").stream()
                .filter(link -> PageText.isInside(link, "contents"))
                .map(link -> link.getAttribute("href").substring(1))
                .toList();
        for (Element part : page.parts()) {
            String id = part.getAttribute("id");
            boolean isFirst = !id.isEmpty() && !id.equals("start") && !id.matches("(door|how)-.*");
            assertTrue(!isFirst || listed.contains(id), id + " is not among " + listed);
        }
    }
}

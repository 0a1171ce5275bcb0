package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.packet.PrintedDemo;
import cyclepacket.pdf.TaggedOrder;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * A packet is read aloud in the order of its text (PDF/UA-1, 7.1 and 7.2, ISO 14289-1:2014): a heading before its section,
 * a picture at the step it belongs to, also where they float beside it on the page.
 */
class ReadingOrderTest {
    private static final Set<String> RUNNING = Set.of("head", "foot", "door-head", "door-foot", "own-lines");

    static Stream<String> plans() throws IOException {
        return PrintedDemo.plans().stream();
    }

    @ParameterizedTest
    @MethodSource("plans")
    void readsHeadingsPicturesAndSentencesInTheirOrder(String plan) throws Exception {
        PrintedDemo.Packet packet = PrintedDemo.of(plan);
        List<String> written = new ArrayList<>();
        collect(PageText.of(packet.xhtml()).all("body").get(0), written);
        List<String> read = new ArrayList<>();
        TaggedOrder.Said last = null;
        for (TaggedOrder.Said said : TaggedOrder.of(packet.pdf())) {
            // The head of a table that goes over pages is one head, printed on each.
            if (!(said.role().equals("TH") && said.equals(last))) {
                read.add(letters(said.text()));
            }
            last = said;
        }
        assertTrue(written.size() > 300, plan + ": " + written.size());
        assertEquals("", difference(spell(written), spell(read)), plan);
    }

    /** The drawing of the plunger follows the question that it answers. */
    @ParameterizedTest
    @MethodSource("plans")
    void showsThePlungerAtItsQuestion(String plan) throws Exception {
        List<TaggedOrder.Said> said = TaggedOrder.of(PrintedDemo.of(plan).pdf());
        for (int at = 0; at < said.size(); at++) {
            if (said.get(at).isPicture() && said.get(at).text().contains("The plunger is ")) {
                boolean isAtEnd = said.get(at).text().contains("is at the end");
                assertEquals(
                        isAtEnd ? "Yes: at the end" : "No: not at the end",
                        said.get(at - 1).text().strip(),
                        plan);
            }
        }
    }

    /** The bands of a draft lie across the page and are no text of it. */
    private static String spell(List<String> pieces) {
        return String.join("", pieces).replace("draftnotforthepatient", "");
    }

    /** The words around the first letter that differs. */
    private static String difference(String written, String read) {
        int at = 0;
        while (at < Math.min(written.length(), read.length()) && written.charAt(at) == read.charAt(at)) {
            at++;
        }
        return written.equals(read) ? "" : around(written, at) + " | " + around(read, at);
    }

    private static String around(String text, int at) {
        return text.substring(Math.max(0, at - 40), Math.min(text.length(), at + 60));
    }

    /** Letters alone: numbers of pages and of steps come from the style sheet. */
    private static String letters(String text) {
        return text.replaceAll("[^\\p{L}]", "").toLowerCase(Locale.ROOT);
    }

    private static void collect(Node node, List<String> written) {
        if (node instanceof Element element) {
            if (Set.of(element.getAttribute("class").split(" ")).stream().anyMatch(RUNNING::contains)) {
                return;
            }
            if (element.getLocalName().equals("svg")) {
                written.add(letters(element.getAttribute("alt")));
                return;
            }
        }
        if (node.getNodeType() == Node.TEXT_NODE
                && !letters(node.getNodeValue()).isEmpty()) {
            written.add(letters(node.getNodeValue()));
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            collect(child, written);
        }
    }
}

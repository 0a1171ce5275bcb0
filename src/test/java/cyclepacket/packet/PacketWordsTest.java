package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Finding;
import cyclepacket.finding.FindingText;
import cyclepacket.finding.Severity;
import cyclepacket.page.TidyPages;
import cyclepacket.pdf.Conformity;
import cyclepacket.pdf.PdfText;
import cyclepacket.pdf.TaggedBlock;
import cyclepacket.pdf.TaggedText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every packet of the demo, in every language: a grade above 6 or one error-prone form fails the build. */
class PacketWordsTest {
    /**
     * Held to the standards for PDF here, since half of the time goes into that; {@code PressTest} holds the English packets
     * to them, and {@link PacketMatrixTest} one of each plan, or with {@code -Dmatrix=all} every one.
     */
    private static final Set<String> CONFORMING = Set.of(
            "SM-04417-issue-3 es",
            "FT-08440-issue-2 es",
            "SM-04417 es large",
            "SM-04417 en cards",
            "DA-05120 es cards");

    private static WordingCheck check;

    @BeforeAll
    static void opens() {
        check = new WordingCheck(Path.of(""));
    }

    static Stream<String> packets() throws IOException {
        List<String> names = new ArrayList<>();
        for (String plan : PrintedDemo.plans()) {
            PrintedDemo.LANGUAGES.forEach(language -> names.add(plan + " " + language));
        }
        names.add("SM-04417 es A4");
        names.add("SM-04417 es large");
        List.of("SM-04417 en", "SM-04417 es", "DA-05120 es", "LM-06233-issue-2 en")
                .forEach(plan -> names.add(plan + " cards"));
        return names.stream();
    }

    private static PrintedDemo.Packet printed(String name) throws IOException {
        String[] parts = name.split(" ");
        if (name.endsWith("cards")) {
            return PrintedDemo.withCards(parts[0], parts[1]);
        }
        return PrintedDemo.of(
                parts[0],
                parts[1],
                name.endsWith("large") ? "large" : "standard",
                name.endsWith("A4") ? "A4" : "letter");
    }

    @ParameterizedTest
    @MethodSource("packets")
    void speaksPlainlyAndKeepsTheStandards(String name) throws IOException {
        PrintedDemo.Packet printed = printed(name);
        byte[] packet = printed.pdf();
        List<Finding> found = new ArrayList<>(check.pdf(packet, name));
        assertTrue(found.stream().anyMatch(finding -> finding.code().equals("WORDING-GRADE")), "a grade");
        found.removeIf(finding -> finding.severity() == Severity.NOTE);
        assertEquals("", FindingText.print(found));
        assertEquals(name.contains(" es"), printed.beside().isPresent(), "staff can read it too");
        endsNoPageWithAHeading(packet);
        assertTrue(!name.endsWith("cards") || printed.cards().isPresent(), "cards");
        if (printed.cards().isPresent()) {
            keepsTheCardsToTheSame(printed.cards().get(), name);
        }
        TidyPages.checkFilled(name, packet, 1.0 / 3);
        if (CONFORMING.contains(name)) {
            Conformity.assertConforms(packet);
        }
        if (name.equals("SM-04417-issue-3 es")) {
            Conformity.assertConforms(printed.beside().orElseThrow());
        }
    }

    private static void keepsTheCardsToTheSame(byte[] cards, String name) throws IOException {
        List<Finding> found = new ArrayList<>(check.pdf(cards, name + " cards"));
        assertTrue(found.stream().anyMatch(finding -> finding.code().equals("WORDING-GRADE")), "a grade");
        found.removeIf(finding -> finding.severity() == Severity.NOTE);
        assertEquals("", FindingText.print(found));
        TidyPages.checkFilled(name + " cards", cards, 1.0 / 3);
        if (CONFORMING.contains(name)) {
            Conformity.assertConforms(cards);
        }
    }

    private static void endsNoPageWithAHeading(byte[] packet) throws IOException {
        List<TaggedBlock> blocks = TaggedText.of(packet);
        List<String> pages = PdfText.lines(packet);
        List<String> alone = new ArrayList<>();
        for (int page = 1; page <= pages.size(); page++) {
            // The footer is the last line; what stands before it is the last line of the page.
            String[] lines = pages.get(page - 1).strip().split("\n");
            String last = lines[Math.max(0, lines.length - 2)].strip();
            int number = page;
            blocks.stream()
                    .filter(block -> block.page() == number && block.role().startsWith("H"))
                    .filter(block -> block.text().equals(last))
                    .forEach(block -> alone.add(block.toString()));
        }
        assertEquals(List.of(), alone);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void holdsEveryTextOfTheFolderToTheSameRules(String language) {
        List<Finding> found = new ArrayList<>(check.language(language));
        found.removeIf(finding -> finding.severity() == Severity.NOTE);
        assertEquals("", FindingText.print(found));
    }
}

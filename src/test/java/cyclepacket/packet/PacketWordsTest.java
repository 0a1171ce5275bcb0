package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Finding;
import cyclepacket.finding.FindingText;
import cyclepacket.finding.Severity;
import cyclepacket.pdf.Conformity;
import cyclepacket.pdf.PdfText;
import cyclepacket.pdf.TaggedBlock;
import cyclepacket.pdf.TaggedText;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every packet of the demo, in every language: a grade above 6 or one error-prone form fails the build. */
class PacketWordsTest {
    private static final int DPI = 24;
    private static final int FOOTER_POINTS = 66;
    private static final List<String> LANGUAGES = List.of("en", "es");

    @TempDir
    static Path folder;

    private static WordedHome home;
    private static Press press;
    private static WordingCheck check;

    @BeforeAll
    static void opens() throws IOException {
        home = new WordedHome(folder.resolve("home"));
        press = new Press(home.path());
        check = new WordingCheck(home.path());
    }

    @AfterAll
    static void closes() {
        press.close();
    }

    static Stream<String> packets() throws IOException {
        List<String> names = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("plans/examples.txt"))) {
            if (!line.isBlank() && !line.startsWith("#")) {
                LANGUAGES.forEach(language -> names.add(line.strip() + " " + language));
            }
        }
        List.of(
                        "SM-04417 en",
                        "SM-04417 es",
                        "SM-04417-issue-3 es",
                        "DA-05120 en",
                        "DA-05120 es",
                        "LM-06233-issue-2 en")
                .forEach(cards -> names.add(cards + " with: [evening-cards]"));
        names.add("SM-04417 es paper: A4");
        names.add("SM-04417 es text-size: large");
        return names.stream();
    }

    private static Path printed(String name) throws IOException {
        String[] parts = name.split(" ", 3);
        Path plan = home.plan(parts[0], "words", text -> {
            String spoken = WordedHome.inLanguage(parts[1]).apply(text);
            if (parts.length == 2 || parts[2].startsWith("with")) {
                return parts.length == 2 ? spoken : spoken + parts[2] + "\n";
            }
            return spoken.replaceAll("(?m)^" + parts[2].split(":")[0] + ": .*$", parts[2]);
        });
        Path out = folder.resolve("out-" + name.replaceAll("[^A-Za-z0-9]", "-"));
        Outcome outcome = press.print(plan, out, false, Instant.EPOCH);
        return outcome.written()
                .orElseThrow(() -> new AssertionError(FindingText.print(outcome.findings())))
                .folder();
    }

    @ParameterizedTest
    @MethodSource("packets")
    void speaksPlainlyAndKeepsTheStandards(String name) throws IOException {
        Path issue = printed(name);
        byte[] packet = Files.readAllBytes(issue.resolve("packet.pdf"));
        List<Finding> found = new ArrayList<>(check.pdf(packet, name));
        assertTrue(found.stream().anyMatch(finding -> finding.code().equals("WORDING-GRADE")), "a grade");
        found.removeIf(finding -> finding.severity() == Severity.NOTE);
        assertEquals("", FindingText.print(found));
        assertEquals(name.contains(" es"), Files.exists(issue.resolve("beside.pdf")), "staff can read it too");
        endsNoPageWithAHeading(packet);
        if (Files.exists(issue.resolve("cards.pdf"))) {
            keepsTheCardsToTheSame(Files.readAllBytes(issue.resolve("cards.pdf")), name);
        }
        fillsAThirdOfEveryPage(packet);
        if (name.contains(" es")) {
            // PressTest holds the English packets to the standards.
            Conformity.assertConforms(packet);
        }
        if (name.equals("SM-04417-issue-3 es")) {
            Conformity.assertConforms(Files.readAllBytes(issue.resolve("beside.pdf")));
        }
    }

    private static void keepsTheCardsToTheSame(byte[] cards, String name) throws IOException {
        List<Finding> found = new ArrayList<>(check.pdf(cards, name + " cards"));
        assertTrue(found.stream().anyMatch(finding -> finding.code().equals("WORDING-GRADE")), "a grade");
        found.removeIf(finding -> finding.severity() == Severity.NOTE);
        assertEquals("", FindingText.print(found));
        fillsAThirdOfEveryPage(cards);
        Conformity.assertConforms(cards);
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

    /** Measured from the top of the page to its lowest mark above the footer. */
    private static void fillsAThirdOfEveryPage(byte[] packet) throws IOException {
        try (PDDocument document = Loader.loadPDF(packet)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                BufferedImage image = renderer.renderImageWithDPI(page, DPI, ImageType.GRAY);
                double lowest = (double) lowestMark(image) / image.getHeight();
                assertTrue(lowest > 1.0 / 3, "page " + (page + 1) + " ends at " + lowest);
            }
        }
    }

    private static int lowestMark(BufferedImage page) {
        for (int row = page.getHeight() - FOOTER_POINTS * DPI / 72; row > 0; row--) {
            for (int column = 0; column < page.getWidth(); column++) {
                if (page.getRaster().getSample(column, row, 0) < 200) {
                    return row;
                }
            }
        }
        return 0;
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void holdsEveryTextOfTheFolderToTheSameRules(String language) {
        List<Finding> found = new ArrayList<>(check.language(language));
        found.removeIf(finding -> finding.severity() == Severity.NOTE);
        assertEquals("", FindingText.print(found));
    }
}

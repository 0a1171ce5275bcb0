package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import cyclepacket.pdf.DocumentFacts;
import cyclepacket.pdf.Sheet;
import cyclepacket.pdf.Typesetter;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The pages that carry amounts, after a bad photocopy: black or white at 150 dots per inch, read by a machine that has
 * not seen the text. The reader is tesseract, of the Debian package tesseract-ocr.
 */
class PhotocopyTest {
    private static final int DPI = 150;
    private static final String OTHERS = "0.7 s of processor time a page";
    private static final Path FOLDER = Path.of("target/photocopy");
    private static final Pattern AMOUNT =
            Pattern.compile("[0-9][0-9.,]* ?(?:units|unidades|mg|micrograms|microgramos)");

    /** The project's own check sets it, so that a missing reader is a failure there. */
    private static final String REQUIRED = "CYCLEPACKET_OCR_REQUIRED";

    @BeforeAll
    static void findsTheReader() {
        boolean isThere = Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, "tesseract")));
        if (!isThere) {
            String message = "NOT CHECKED: amounts after a photocopy. Install the Debian package tesseract-ocr.";
            assertFalse(Optional.ofNullable(System.getenv(REQUIRED)).isPresent(), message);
            System.err.println(message);
            Assumptions.abort(message);
        }
    }

    @Test
    void readsTheAmountsOfDoorTriggerAndNewCartridgePages() throws Exception {
        byte[] pdf = print(new DemoPlan(3));
        List<String> pages = TidyPages.texts(pdf);
        for (String words : List.of(
                "WH, issue 3",
                "true only while your dose is",
                "when the window does not show 0. Its number",
                "Your trigger: one injection, exact time Follow")) {
            int index = pages.indexOf(pages.stream()
                    .filter(page -> page.contains(words))
                    .findFirst()
                    .orElseThrow());
            List<String> printed = amounts(pages.get(index));
            assertNotEquals(List.of(), printed, words);
            assertEquals(printed, amounts(read(photocopy(pdf, index))), words);
        }
    }

    /** Every page that carries an amount, in Spanish and in large print; the reader takes {@value #OTHERS}. */
    @ParameterizedTest
    @CsvSource({"es, standard", "en, large", "es, large"})
    @EnabledIfSystemProperty(named = "photocopy", matches = "all", disabledReason = "takes " + OTHERS)
    void readsEveryAmountInTheOtherPrints(String language, String size) throws Exception {
        LaidOut laid = LaidOut.demo("SM-04417-issue-3")
                .with("patients/SM-04417-issue-3.yaml", "text-size: standard", "text-size: " + size);
        byte[] pdf = PacketPrintTest.print(
                new PageWriter(DemoPlan.TEMPLATES).packet(FormPackets.facts(laid), language, !language.equals("en")),
                language);
        List<String> pages = TidyPages.texts(pdf);
        int read = 0;
        for (int index = 0; index < pages.size(); index++) {
            List<String> printed = amounts(pages.get(index));
            if (!printed.isEmpty()) {
                read++;
                assertEquals(
                        printed, amounts(read(photocopy(pdf, index))), language + " " + size + ", page " + (index + 1));
            }
        }
        assertTrue(read > 4, "pages with amounts: " + read);
    }

    @Test
    void readsTheAmountOfAnEveningCard() throws Exception {
        DocumentFacts facts = new DocumentFacts("Cards", "Cards for a test", "en", DemoPlan.march(3), "test");
        byte[] pdf = Typesetter.open(DemoPlan.TEMPLATES)
                .typeset(new Sheet(EveningCardsTest.page(new DemoPlan(1), "en"), facts, List.of()))
                .value()
                .orElseThrow();
        assertEquals(List.of("187.5units"), amounts(read(photocopy(pdf, 0))));
    }

    /** The demo's own numbers, written out, so that a page that lost an amount in print and in the copy is seen. */
    @Test
    void expectsTheAmountsOfTheDemo() throws IOException {
        List<String> pages = TidyPages.texts(print(new DemoPlan(3)));
        String door = pages.stream()
                .filter(page -> page.contains("WH, issue 3"))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("0.25mg", "212.5units", "250micrograms"), amounts(door));
        assertTrue(amounts("no amount: 12 March").isEmpty());
    }

    private static byte[] print(DemoPlan plan) throws IOException {
        DocumentFacts facts = new DocumentFacts("A packet", "A packet for a test", "en", DemoPlan.march(3), "test");
        return Typesetter.open(DemoPlan.TEMPLATES)
                .typeset(new Sheet(PacketRulesTest.xhtml(plan), facts, List.of()))
                .value()
                .orElseThrow();
    }

    /** Amounts in alphabetical order, without spaces. */
    private static List<String> amounts(String text) {
        return AMOUNT.matcher(text.replace('\u00a0', ' '))
                .results()
                .map(MatchResult::group)
                .map(amount -> amount.replace(" ", ""))
                .sorted()
                .toList();
    }

    private static Path photocopy(byte[] pdf, int index) throws IOException {
        Files.createDirectories(FOLDER);
        Path copy = FOLDER.resolve("page-" + (index + 1) + ".png");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(index, DPI, ImageType.GRAY);
            BufferedImage bits = new BufferedImage(page.getWidth(), page.getHeight(), BufferedImage.TYPE_BYTE_BINARY);
            for (int row = 0; row < page.getHeight(); row++) {
                for (int column = 0; column < page.getWidth(); column++) {
                    bits.getRaster()
                            .setSample(column, row, 0, page.getRaster().getSample(column, row, 0) < 128 ? 0 : 1);
                }
            }
            assertTrue(ImageIO.write(bits, "png", copy.toFile()));
        }
        return copy;
    }

    /** Sparse text, the mode for forms: the mode for one block of text reads a line between two rows twice. */
    private static String read(Path image) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("tesseract", image.toString(), "stdout"));
        command.addAll(List.of("--psm", "11", "--dpi", Integer.toString(DPI)));
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("OMP_THREAD_LIMIT", "1");
        Process process = builder.start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), image.toString());
        return text;
    }
}

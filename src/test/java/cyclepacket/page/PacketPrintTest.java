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
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The packet as it comes off the printer: sizes, fullness of pages, and the published rules for PDF. */
class PacketPrintTest {
    private static final List<Attachment> NONE = List.of();
    private static final int DPI = 36;
    private static final int FOOTER_POINTS = 66;

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
        DocumentFacts facts = new DocumentFacts("A packet", "A packet for a test", "en", DemoPlan.march(3), "test");
        Checked<byte[]> pdf =
                Typesetter.open(DemoPlan.TEMPLATES).typeset(new Sheet(PacketRulesTest.xhtml(plan), facts, NONE));
        assertEquals(List.of(), pdf.findings());
        return pdf.value().orElseThrow();
    }

    /** Text of one page with its place. */
    private static final class Marks extends PDFTextStripper {
        private double smallest = Double.MAX_VALUE;
        private String text = "";

        static List<Marks> of(PDDocument document) throws IOException {
            List<Marks> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                Marks marks = new Marks();
                marks.setStartPage(page);
                marks.setEndPage(page);
                marks.text = marks.getText(document);
                pages.add(marks);
            }
            return pages;
        }

        @Override
        protected void writeString(String line, List<TextPosition> positions) throws IOException {
            for (TextPosition position : positions) {
                if (!position.getUnicode().isBlank()) {
                    smallest = Math.min(smallest, position.getFontSizeInPt());
                }
            }
            super.writeString(line, positions);
        }
    }

    /**
     * Clear print: 12 point at least (UKAAF G003, 2019). At standard size no page ends in its first third; large print is
     * not held to it yet.
     */
    @ParameterizedTest
    @MethodSource("prints")
    void fillsItsPagesWithTextThatIsLargeEnough(DemoPlan plan) throws IOException {
        try (PDDocument document = Loader.loadPDF(print(plan))) {
            PDFRenderer renderer = new PDFRenderer(document);
            List<Marks> pages = Marks.of(document);
            for (int index = 0; index < pages.size(); index++) {
                Marks page = pages.get(index);
                assertTrue(page.smallest >= 11.99, page.smallest + " pt: " + page.text);
                double lowest = lowestMark(renderer.renderImageWithDPI(index, DPI, ImageType.GRAY));
                double least = plan.textSize == Plan.TextSize.LARGE ? 0 : 1.0 / 3;
                assertTrue(lowest > least, name(plan) + " ends at " + lowest + ": " + page.text);
            }
        }
    }

    private static String name(DemoPlan plan) {
        return "issue " + plan.issue + ", " + plan.paper + ", " + plan.textSize;
    }

    /** How far down the page the lowest mark above the footer is, as a part of the page's height. */
    private static double lowestMark(BufferedImage page) {
        int footer = page.getHeight() - FOOTER_POINTS * DPI / 72;
        for (int row = footer - 1; row > 0; row--) {
            for (int column = 0; column < page.getWidth(); column++) {
                if (page.getRaster().getSample(column, row, 0) < 200) {
                    return (double) row / page.getHeight();
                }
            }
        }
        return 0;
    }

    /** A page for the door: one page, unless large print needs more. */
    @Test
    void fitsTheDoorOnOnePage() throws IOException {
        for (Plan.Paper paper : Plan.Paper.values()) {
            DemoPlan plan = new DemoPlan(1);
            plan.paper = paper;
            try (PDDocument document = Loader.loadPDF(print(plan))) {
                long doors = Marks.of(document).stream()
                        .filter(page -> page.text.contains("WH, issue"))
                        .count();
                assertEquals(1, doors);
            }
        }
    }

    /** A card that is read at night must not run over the leaf: one page, or in large print two or three that break between stages. */
    @ParameterizedTest
    @MethodSource("cards")
    void keepsTheCardOnItsPage(DemoPlan plan) throws IOException {
        try (PDDocument document = Loader.loadPDF(print(plan))) {
            List<String> pages =
                    Marks.of(document).stream().map(page -> page.text).toList();
            int first = indexOf(pages, "Turn to side 2.");
            int second = indexOf(pages, "Have this page with you when you call.");
            boolean isLarge = plan.textSize == Plan.TextSize.LARGE;
            assertTrue(isLarge || second - first == 1, name(plan) + pages.subList(first, second));
        }
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

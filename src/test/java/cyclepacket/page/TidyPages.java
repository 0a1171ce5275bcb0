package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.pdf.PageFoot;
import cyclepacket.pdf.TextRuns;
import cyclepacket.pdf.UprightRules;
import cyclepacket.plan.Plan;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** What must hold of every printed page: full enough, large enough, no text over text, nothing alone at its foot. */
public final class TidyPages {
    private static final int DPI = 36;
    private static final int FOOTER_POINTS = 66;

    /** Points of the margins that hold the running lines of a page. */
    private static final int RUNNING_ABOVE = 92;

    private static final int RUNNING_BELOW = 62;

    private TidyPages() {}

    /**
     * Clear print: 12 point at least; large print 18, and 16 in the running lines of the margins (sizes: UKAAF G003,
     * 2019; the 16 is common practice, no published source). No page ends in its first third.
     */
    static void check(String name, byte[] pdf, Plan.TextSize size) throws IOException {
        check(name, pdf, size, 1.0 / 3);
    }

    /** @param least the part of a page's height that its text must reach down to */
    public static void check(String name, byte[] pdf, Plan.TextSize size, double least) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(List.of(), PageFoot.lonelyHeads(document), name);
            assertEquals(List.of(), PageFoot.lonelyItems(document), name);
            PDFRenderer renderer = new PDFRenderer(document);
            List<List<TextRuns.Run>> pages = TextRuns.of(document);
            for (int index = 0; index < pages.size(); index++) {
                String place = name + ", page " + (index + 1);
                assertEquals(List.of(), TextRuns.overlaps(pages.get(index)), place);
                float height = document.getPage(index).getMediaBox().getHeight();
                pages.get(index).forEach(run -> checkSize(place, run, height, size));
                checkFilled(place, renderer, index, pages.get(index), height, least);
            }
        }
    }

    /** No text runs over the side of a cell or a box. */
    public static void checkRules(String name, byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<List<TextRuns.Run>> pages = TextRuns.of(document);
            for (int index = 0; index < pages.size(); index++) {
                assertEquals(
                        List.of(),
                        UprightRules.crossed(document.getPage(index), pages.get(index)),
                        name + ", page " + (index + 1));
            }
        }
    }

    /** @param least the part of a page's height that its marks must reach down to */
    public static void checkFilled(String name, byte[] pdf, double least) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            List<List<TextRuns.Run>> pages = TextRuns.of(document);
            for (int index = 0; index < pages.size(); index++) {
                float height = document.getPage(index).getMediaBox().getHeight();
                checkFilled(name + ", page " + (index + 1), renderer, index, pages.get(index), height, least);
            }
        }
    }

    /** A page whose text does not reach down so far may still have a drawing or empty rows that do: only then it is drawn. */
    private static void checkFilled(
            String place, PDFRenderer renderer, int index, List<TextRuns.Run> runs, float height, double least)
            throws IOException {
        boolean isFilled = runs.stream()
                .anyMatch(run -> run.baseline() > height * least && run.baseline() < height - FOOTER_POINTS);
        if (!isFilled) {
            double lowest = lowestMark(renderer.renderImageWithDPI(index, DPI, ImageType.GRAY));
            assertTrue(lowest > least, place + " ends at " + lowest);
        }
    }

    private static void checkSize(String place, TextRuns.Run run, float height, Plan.TextSize size) {
        boolean isRunning = run.baseline() < RUNNING_ABOVE || run.baseline() > height - RUNNING_BELOW;
        double smallest = size == Plan.TextSize.STANDARD ? 12 : isRunning ? 16 : 18;
        assertTrue(run.size() >= smallest - 0.01, place + ": " + run);
    }

    /** Text of each page, in order. */
    static List<String> texts(byte[] pdf) throws IOException {
        List<String> texts = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                texts.add(stripper.getText(document).replaceAll("\\s+", " "));
            }
        }
        return texts;
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
}

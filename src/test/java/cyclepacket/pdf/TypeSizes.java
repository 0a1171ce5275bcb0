package cyclepacket.pdf;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * Measures a PDF as a person with a ruler would: sizes of type, length of lines, and how far down a page is filled.
 *
 * @param pages in order, the first page at index 0
 */
public record TypeSizes(List<Page> pages) {
    private static final float DOTS_PER_INCH = 72;

    /**
     * One page.
     *
     * @param number from 1
     * @param smallestPoints the smallest size of any letter, footer included; infinite on a page without letters
     * @param longestLine characters of the longest run of text without a gap, spaces included
     * @param longestLineText that run
     * @param heightPoints from the top edge to the bottom edge
     * @param widthPoints from the left edge to the right edge
     * @param rightmostPoints from the left edge to the end of the letter furthest to the right; beyond the width is
     *     text that nobody will see
     * @param lowestMarkPoints from the top edge down to the lowest mark above the footer; 0 on an empty page
     */
    public record Page(
            int number,
            double smallestPoints,
            int longestLine,
            String longestLineText,
            double heightPoints,
            double widthPoints,
            double rightmostPoints,
            double lowestMarkPoints) {
        /** From 0, empty, to 1, marked down to the bottom edge. */
        public double fullness() {
            return lowestMarkPoints / heightPoints;
        }
    }

    /** @param footerPoints what lies this near the bottom edge is the footer and does not fill a page */
    public static TypeSizes of(byte[] pdf, double footerPoints) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            List<Page> pages = new ArrayList<>();
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                Letters letters = Letters.of(document, i + 1);
                PDRectangle box = document.getPage(i).getMediaBox();
                BufferedImage image = renderer.renderImageWithDPI(i, DOTS_PER_INCH, ImageType.GRAY);
                pages.add(new Page(
                        i + 1,
                        letters.smallest,
                        letters.longest.codePointCount(0, letters.longest.length()),
                        letters.longest,
                        box.getHeight(),
                        box.getWidth(),
                        letters.rightmost,
                        lowestMark(image, box.getHeight() - footerPoints)));
            }
            return new TypeSizes(List.copyOf(pages));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The smallest size of any letter in the document, in points. */
    public double smallestPoints() {
        return pages.stream().mapToDouble(Page::smallestPoints).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** Characters of the longest line in the document. */
    public int longestLine() {
        return pages.stream().mapToInt(Page::longestLine).max().orElse(0);
    }

    /** One dot is one point; paper is white, and anything darker is a mark. */
    private static double lowestMark(BufferedImage image, double limit) {
        for (int y = Math.min(image.getHeight(), (int) Math.floor(limit)) - 1; y >= 0; y--) {
            for (int x = 0; x < image.getWidth(); x++) {
                if ((image.getRGB(x, y) & 0xFF) < 0xE0) {
                    return y + 1;
                }
            }
        }
        return 0;
    }

    /** Collects the letters of one page in the order in which they are drawn. */
    private static final class Letters extends PDFTextStripper {
        private double smallest = Double.POSITIVE_INFINITY;
        private double rightmost;
        private String longest = "";
        private final StringBuilder line = new StringBuilder();
        private TextPosition last;

        static Letters of(PDDocument document, int page) throws IOException {
            Letters letters = new Letters();
            letters.setStartPage(page);
            letters.setEndPage(page);
            letters.getText(document);
            letters.endLine();
            return letters;
        }

        @Override
        protected void processTextPosition(TextPosition letter) {
            if (!letter.getUnicode().isBlank()) {
                smallest = Math.min(smallest, points(letter));
                rightmost = Math.max(rightmost, letter.getXDirAdj() + letter.getWidthDirAdj());
            }
            if (last != null && !continues(last, letter)) {
                endLine();
            }
            line.append(letter.getUnicode());
            last = letter;
            super.processTextPosition(letter);
        }

        private void endLine() {
            String done = line.toString().strip();
            if (done.length() > longest.length()) {
                longest = done;
            }
            line.setLength(0);
        }

        /** The library cuts its own size in points to a whole number, and a slant adds to the height of its matrix. */
        private static double points(TextPosition letter) {
            return letter.getTextMatrix().getScalingFactorX();
        }

        /** The same base line, and no more between the two than a wide space. */
        private static boolean continues(TextPosition before, TextPosition after) {
            double gap = after.getXDirAdj() - (before.getXDirAdj() + before.getWidthDirAdj());
            double step = Math.abs(after.getYDirAdj() - before.getYDirAdj());
            return step < 1 && gap > -2 && gap < points(after);
        }
    }
}

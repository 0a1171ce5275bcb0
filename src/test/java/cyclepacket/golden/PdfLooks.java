package cyclepacket.golden;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** How the pages of a PDF look, in grey, with the places of both issues' codes painted over. */
final class PdfLooks {
    private static final float DOTS_AN_INCH = 40;
    /** Of 255; less is the edge of a letter that stands a hair further. */
    private static final int SEEN = 60;

    private PdfLooks() {}

    /** The pages, by their number from 1, on which some dot looks different. */
    static List<Integer> different(byte[] one, byte[] other, PdfMeaning meaning, PdfMeaning otherMeaning) {
        List<Integer> different = new ArrayList<>();
        try (PDDocument left = Loader.loadPDF(one);
                PDDocument right = Loader.loadPDF(other)) {
            PDFRenderer leftPages = new PDFRenderer(left);
            PDFRenderer rightPages = new PDFRenderer(right);
            for (int page = 0; page < left.getNumberOfPages(); page++) {
                List<Rectangle2D> hidden = new ArrayList<>(meaning.codes().get(page));
                hidden.addAll(otherMeaning.codes().get(page));
                if (differ(picture(leftPages, page, hidden), picture(rightPages, page, hidden))) {
                    different.add(page + 1);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return different;
    }

    private static BufferedImage picture(PDFRenderer pages, int page, List<Rectangle2D> hidden) throws IOException {
        BufferedImage picture = pages.renderImageWithDPI(page, DOTS_AN_INCH, ImageType.GRAY);
        Graphics2D brush = picture.createGraphics();
        brush.setTransform(AffineTransform.getScaleInstance(DOTS_AN_INCH / 72, DOTS_AN_INCH / 72));
        brush.setColor(Color.WHITE);
        hidden.forEach(brush::fill);
        brush.dispose();
        return picture;
    }

    private static boolean differ(BufferedImage one, BufferedImage other) {
        if (one.getWidth() != other.getWidth() || one.getHeight() != other.getHeight()) {
            return true;
        }
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                int grey = one.getRaster().getSample(x, y, 0);
                if (Math.abs(grey - other.getRaster().getSample(x, y, 0)) > SEEN) {
                    return true;
                }
            }
        }
        return false;
    }
}

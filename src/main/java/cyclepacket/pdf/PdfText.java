package cyclepacket.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Reads the text back out of a PDF. */
public final class PdfText {
    private PdfText() {}

    /** @throws UncheckedIOException when the bytes are not a PDF */
    static List<String> pages(byte[] pdf) {
        return pages(pdf, false);
    }

    /**
     * The printed lines of each page from top to bottom, whatever the order in which they were painted.
     *
     * @throws UncheckedIOException when the bytes are not a PDF
     */
    public static List<String> lines(byte[] pdf) {
        return pages(pdf, true);
    }

    private static List<String> pages(byte[] pdf, boolean isByPlace) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setLineSeparator("\n");
                stripper.setSortByPosition(isByPlace);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
            return List.copyOf(pages);
        } catch (IOException e) {
            throw new UncheckedIOException("the bytes are not a PDF", e);
        }
    }
}

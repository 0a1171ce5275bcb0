package cyclepacket.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** The text of a finished chart copy as an eye reads it: line by line, from left to right. */
final class ChartLines {
    private ChartLines() {}

    /** The lines of each page, no-break spaces as plain ones. */
    static List<List<String>> pages(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<List<String>> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document)
                        .lines()
                        .map(line -> line.replace('\u00a0', ' ').strip())
                        .toList());
            }
            return pages;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The lines of one page without what stands above and below the text of every page. */
    static List<String> body(List<String> page) {
        return page.stream().filter(line -> !line.isEmpty() && !isFrame(line)).toList();
    }

    private static boolean isFrame(String line) {
        return line.matches(
                "DRAFT - NOT FOR THE PATIENT.*|Nothing starts before our call\\.|.*Chart copy\\. Not for the patient\\.|Plan \\S+, issue \\d+, code .*");
    }

    /** All text on one line. */
    static String text(byte[] pdf) {
        List<String> lines = new ArrayList<>();
        pages(pdf).forEach(page -> lines.addAll(body(page)));
        return String.join(" ", lines).replaceAll("\\s+", " ");
    }
}

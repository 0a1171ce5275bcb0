package cyclepacket.golden;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * What a PDF says: the lines of its pages, how a screen reader walks through it, its bookmarks and facts. The issue's
 * code, which changes with every template, is left out.
 *
 * @param codes where the code stands on each page, in points from its upper left corner
 */
record PdfMeaning(
        List<String> facts,
        List<List<String>> pages,
        List<String> structure,
        List<String> bookmarks,
        List<List<Rectangle2D>> codes) {
    private static final Pattern CODE = Pattern.compile("\\b[0-9A-Z]{4}-[0-9A-Z]{4}-[0-9A-Z]{3}\\b");

    static PdfMeaning of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<List<String>> pages = new ArrayList<>();
            List<List<Rectangle2D>> codes = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                Words words = new Words(page);
                pages.add(masked(words.getText(document))
                        .lines()
                        .map(String::strip)
                        .toList());
                codes.add(words.codes);
            }
            List<String> structure = new ArrayList<>();
            walk(document.getDocumentCatalog().getStructureTreeRoot(), 0, structure);
            List<String> bookmarks = new ArrayList<>();
            bookmarks(document.getDocumentCatalog().getDocumentOutline(), 0, bookmarks);
            return new PdfMeaning(facts(document), pages, structure, bookmarks, codes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String masked(String text) {
        return CODE.matcher(text).replaceAll("CODE");
    }

    private static List<String> facts(PDDocument document) throws IOException {
        List<String> facts = new ArrayList<>();
        facts.add("title " + document.getDocumentInformation().getTitle());
        facts.add("language " + document.getDocumentCatalog().getLanguage());
        facts.add("paper " + document.getPage(0).getMediaBox());
        facts.add("links " + links(document));
        return facts;
    }

    private static int links(PDDocument document) throws IOException {
        int links = 0;
        for (int page = 0; page < document.getNumberOfPages(); page++) {
            links += document.getPage(page).getAnnotations().size();
        }
        return links;
    }

    private static void walk(PDStructureNode node, int depth, List<String> into) {
        if (node == null) {
            return;
        }
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                String says = element.getAlternateDescription() == null ? "" : " " + element.getAlternateDescription();
                String language = element.getLanguage() == null ? "" : " in " + element.getLanguage();
                into.add(" ".repeat(depth) + element.getStructureType() + language + masked(says));
                walk(element, depth + 1, into);
            }
        }
    }

    private static void bookmarks(PDOutlineNode node, int depth, List<String> into) {
        if (node != null) {
            for (PDOutlineItem item : node.children()) {
                into.add(" ".repeat(depth) + item.getTitle());
                bookmarks(item, depth + 1, into);
            }
        }
    }

    /** The lines of one page from top to bottom, and where a code stands in them. */
    private static final class Words extends PDFTextStripper {
        private final List<Rectangle2D> codes = new ArrayList<>();

        Words(int page) {
            setSortByPosition(true);
            setLineSeparator("\n");
            setStartPage(page);
            setEndPage(page);
        }

        @Override
        protected void writeString(String text, List<TextPosition> letters) throws IOException {
            Matcher code = CODE.matcher(text.toUpperCase(Locale.ROOT));
            while (code.find() && code.end() <= letters.size()) {
                TextPosition first = letters.get(code.start());
                TextPosition last = letters.get(code.end() - 1);
                codes.add(new Rectangle2D.Float(
                        first.getX() - 2,
                        first.getY() - first.getHeight() - 4,
                        last.getX() + last.getWidth() - first.getX() + 40,
                        first.getHeight() + 10));
            }
            super.writeString(text, letters);
        }
    }
}

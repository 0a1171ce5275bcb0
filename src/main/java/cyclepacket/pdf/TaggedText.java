package cyclepacket.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** Reads the blocks of a tagged PDF in the order of its structure; what is marked as an artifact is left out. */
public final class TaggedText {
    private static final Set<String> BLOCKS = Set.of("P", "LBody", "H1", "H2", "H3", "H4", "TH", "TD", "Caption");

    /** A gap of more than this part of the type size is a space. */
    private static final double SPACE = 0.15;

    private final Map<PDPage, Integer> numbers = new HashMap<>();
    private final Map<PDPage, Map<Integer, List<TextPosition>>> marked = new HashMap<>();
    private final List<TaggedBlock> blocks = new ArrayList<>();

    private TaggedText() {}

    /**
     * @return every block that has text; none for a PDF without structure
     * @throws IOException when the bytes are not a PDF
     */
    public static List<TaggedBlock> of(byte[] pdf) throws IOException {
        TaggedText text = new TaggedText();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                text.numbers.put(page, text.numbers.size() + 1);
                text.marked.put(page, contents(page));
            }
            PDStructureNode root = document.getDocumentCatalog().getStructureTreeRoot();
            String language = Optional.ofNullable(document.getDocumentCatalog().getLanguage())
                    .orElse("");
            if (root != null) {
                text.walk(root, new Open("", language, new ArrayList<>()));
            }
        }
        return List.copyOf(text.blocks);
    }

    /** The block that is being read. */
    private record Open(String role, String language, List<Glyph> glyphs) {}

    private record Glyph(int page, TextPosition position) {}

    private static Map<Integer, List<TextPosition>> contents(PDPage page) throws IOException {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.setSuppressDuplicateOverlappingText(false);
        extractor.processPage(page);
        Map<Integer, List<TextPosition>> byId = new HashMap<>();
        extractor.getMarkedContents().forEach(content -> collect(content, byId));
        return byId;
    }

    private static void collect(PDMarkedContent content, Map<Integer, List<TextPosition>> byId) {
        for (Object part : content.getContents()) {
            if (part instanceof TextPosition position && content.getMCID() >= 0) {
                byId.computeIfAbsent(content.getMCID(), id -> new ArrayList<>()).add(position);
            } else if (part instanceof PDMarkedContent inner) {
                collect(inner, byId);
            }
        }
    }

    private void walk(PDStructureNode node, Open open) {
        PDPage page = node instanceof PDStructureElement element ? element.getPage() : null;
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                enter(element, open);
            } else if (kid instanceof PDMarkedContentReference reference) {
                add(open, reference.getPage() == null ? page : reference.getPage(), reference.getMCID());
            } else if (kid instanceof Integer id) {
                add(open, page, id);
            }
        }
    }

    private void enter(PDStructureElement element, Open open) {
        String language = Optional.ofNullable(element.getLanguage()).orElse(open.language());
        String role = element.getStandardStructureType();
        if (!BLOCKS.contains(role) && language.equals(open.language())) {
            walk(element, open);
            return;
        }
        Open own = new Open(BLOCKS.contains(role) ? role : open.role(), language, new ArrayList<>());
        int before = blocks.size();
        walk(element, own);
        String text = text(own.glyphs());
        if (!text.isBlank()) {
            int first = own.glyphs().stream().mapToInt(Glyph::page).min().orElse(1);
            blocks.add(before, new TaggedBlock(first, own.role(), language, text));
        }
    }

    private void add(Open open, PDPage page, int id) {
        if (page != null && marked.containsKey(page)) {
            marked.get(page)
                    .getOrDefault(id, List.of())
                    .forEach(position -> open.glyphs().add(new Glyph(numbers.get(page), position)));
        }
    }

    /** In the order in which they are read, whatever the order in which they were painted. */
    private static String text(List<Glyph> glyphs) {
        List<Glyph> sorted = new ArrayList<>(glyphs);
        sorted.sort(Comparator.<Glyph>comparingInt(Glyph::page)
                .thenComparingLong(glyph -> Math.round(glyph.position().getYDirAdj()))
                .thenComparingDouble(glyph -> glyph.position().getXDirAdj()));
        StringBuilder text = new StringBuilder();
        Glyph last = null;
        for (Glyph glyph : sorted) {
            if (last != null && isApart(last.position(), glyph.position())) {
                text.append(' ');
            }
            text.append(glyph.position().getUnicode());
            last = glyph;
        }
        return text.toString().replaceAll("[ \\t\\n]+", " ").strip();
    }

    private static boolean isApart(TextPosition last, TextPosition next) {
        double gap = next.getXDirAdj() - last.getXDirAdj() - last.getWidthDirAdj();
        boolean isOtherLine = Math.abs(next.getYDirAdj() - last.getYDirAdj()) > 2;
        return isOtherLine || gap > SPACE * next.getFontSizeInPt();
    }
}

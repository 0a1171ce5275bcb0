package cyclepacket.pdf;

import java.io.IOException;
import java.util.ArrayList;
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

/** What a tagged PDF says, one by one in the order of its structure: words, and pictures by what they say they show. */
public final class TaggedOrder {
    /**
     * One run of words or one picture.
     *
     * @param role the innermost element of the structure that holds it: P, H2, LBody, Figure and the like
     * @param language its own or that of what holds it
     */
    public record Said(String role, String language, String text) {
        public boolean isPicture() {
            return role.equals("Figure");
        }
    }

    private static final Set<String> INLINE = Set.of("Span", "Link", "Reference");

    private final Map<PDPage, Map<Integer, String>> words = new HashMap<>();
    private final List<Said> said = new ArrayList<>();

    private TaggedOrder() {}

    public static List<Said> of(byte[] pdf) throws IOException {
        TaggedOrder order = new TaggedOrder();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
                extractor.setSuppressDuplicateOverlappingText(false);
                extractor.processPage(page);
                Map<Integer, String> own = new HashMap<>();
                extractor.getMarkedContents().forEach(content -> collect(content, own));
                order.words.put(page, own);
            }
            order.walk(
                    document.getDocumentCatalog().getStructureTreeRoot(),
                    null,
                    "",
                    document.getDocumentCatalog().getLanguage());
        }
        return List.copyOf(order.said);
    }

    private static void collect(PDMarkedContent content, Map<Integer, String> own) {
        for (Object part : content.getContents()) {
            if (part instanceof TextPosition position && content.getMCID() >= 0) {
                own.merge(content.getMCID(), position.getUnicode(), String::concat);
            } else if (part instanceof PDMarkedContent inner) {
                collect(inner, own);
            }
        }
    }

    private void walk(PDStructureNode node, PDPage above, String role, String language) {
        PDPage page = Optional.ofNullable(node instanceof PDStructureElement own ? own.getPage() : null)
                .orElse(above);
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                String type = element.getStandardStructureType();
                String own = Optional.ofNullable(element.getLanguage()).orElse(language);
                if (type.equals("Figure")) {
                    said.add(new Said(type, own, element.getAlternateDescription()));
                } else {
                    walk(element, page, INLINE.contains(type) ? role : type, own);
                }
            } else if (kid instanceof PDMarkedContentReference reference) {
                say(reference.getPage() == null ? page : reference.getPage(), reference.getMCID(), role, language);
            } else if (kid instanceof Integer id) {
                say(page, id, role, language);
            }
        }
    }

    private void say(PDPage page, int id, String role, String language) {
        String text = words.getOrDefault(page, Map.of()).getOrDefault(id, "");
        if (!text.isBlank()) {
            said.add(new Said(role, language, text));
        }
    }
}

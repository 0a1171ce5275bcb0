package cyclepacket.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** Headings and heads of tables that stand alone at a page's foot, found by the tags of the document. */
public final class PageFoot {
    private static final Set<String> HEADS = Set.of("H1", "H2", "H3", "H4", "THead");

    /** Points by which a heading of larger type, or of one more line, may lie lower than the text beside it. */
    private static final double SAME_LINE = 12;

    /** Marks of headings and of heads of tables, by the dictionary of their page. */
    private final Map<COSDictionary, Set<Integer>> heads = new HashMap<>();

    private PageFoot() {}

    /** Pages, from 1, whose lowest text is a heading or the head of a table, with that text. */
    public static List<String> lonelyHeads(PDDocument document) throws IOException {
        PageFoot foot = new PageFoot();
        foot.walk(document.getDocumentCatalog().getStructureTreeRoot(), false);
        List<String> lonely = new ArrayList<>();
        for (int index = 0; index < document.getNumberOfPages(); index++) {
            PDPage page = document.getPage(index);
            Map<Integer, Lowest> marks = lowestByMark(page);
            Set<Integer> own = foot.heads.getOrDefault(page.getCOSObject(), Set.of());
            double beside = marks.entrySet().stream()
                    .filter(mark -> !own.contains(mark.getKey()))
                    .mapToDouble(mark -> mark.getValue().down)
                    .max()
                    .orElse(0);
            marks.entrySet().stream()
                    .max(Map.Entry.comparingByValue())
                    .filter(lowest -> own.contains(lowest.getKey()))
                    .filter(lowest -> lowest.getValue().down > beside + SAME_LINE)
                    .map(lowest -> "page " + (document.getPages().indexOf(page) + 1) + ": " + lowest.getValue().text)
                    .ifPresent(lonely::add);
        }
        return lonely;
    }

    /** Pages, from 1, that end with a heading and one item of its list, while the list goes on overleaf; with the heading. */
    public static List<String> lonelyItems(PDDocument document) throws IOException {
        List<Block> blocks = new ArrayList<>();
        collect(document.getDocumentCatalog().getStructureTreeRoot(), blocks);
        List<String> lonely = new ArrayList<>();
        for (int index = 0; index + 2 < blocks.size(); index++) {
            Block head = blocks.get(index);
            Block first = blocks.get(index + 1);
            Block second = blocks.get(index + 2);
            boolean isList = HEADS.contains(head.role) && first.role.equals("LI") && second.role.equals("LI");
            if (isList && first.page.equals(head.page) && !second.page.equals(head.page)) {
                int page = document.getPages().indexOf(new PDPage(head.page)) + 1;
                lonely.add("page " + page + ": "
                        + lowestByMark(document.getPage(page - 1)).get(head.mark).text);
            }
        }
        return lonely;
    }

    /** A heading, a paragraph or an item of a list, where it begins. */
    private record Block(String role, COSDictionary page, int mark) {}

    private static void collect(PDStructureNode node, List<Block> blocks) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement child) {
                Set<String> whole = Set.of("H1", "H2", "H3", "H4", "P", "LI", "TR", "Figure");
                if (whole.contains(child.getStructureType())) {
                    begins(child)
                            .ifPresent(mark -> blocks.add(new Block(
                                    child.getStructureType(), mark.getPage().getCOSObject(), mark.getMCID())));
                } else {
                    collect(child, blocks);
                }
            }
        }
    }

    /** The first text of an element, however deep it lies. */
    private static Optional<PDMarkedContentReference> begins(PDStructureElement element) {
        for (Object kid : element.getKids()) {
            if (kid instanceof PDMarkedContentReference reference) {
                return Optional.of(reference);
            }
            if (kid instanceof Integer mark && element.getPage() != null) {
                PDMarkedContentReference reference = new PDMarkedContentReference();
                reference.setMCID(mark);
                reference.setPage(element.getPage());
                return Optional.of(reference);
            }
            if (kid instanceof PDStructureElement child) {
                Optional<PDMarkedContentReference> first = begins(child);
                if (first.isPresent()) {
                    return first;
                }
            }
        }
        return Optional.empty();
    }

    private void walk(PDStructureNode node, boolean inHead) {
        boolean head =
                inHead || node instanceof PDStructureElement element && HEADS.contains(element.getStructureType());
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureNode child) {
                walk(child, head);
            } else if (head && kid instanceof PDMarkedContentReference reference) {
                note(reference.getPage(), reference.getMCID());
            } else if (head && kid instanceof Integer mark) {
                note(((PDStructureElement) node).getPage(), mark);
            }
        }
    }

    private void note(PDPage page, int mark) {
        heads.computeIfAbsent(page.getCOSObject(), any -> new HashSet<>()).add(mark);
    }

    private static Map<Integer, Lowest> lowestByMark(PDPage page) throws IOException {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.processPage(page);
        Map<Integer, Lowest> marks = new HashMap<>();
        extractor.getMarkedContents().forEach(content -> gather(content, marks));
        return marks;
    }

    private static void gather(PDMarkedContent content, Map<Integer, Lowest> marks) {
        StringBuilder text = new StringBuilder();
        double down = 0;
        for (Object part : content.getContents()) {
            if (part instanceof TextPosition letter) {
                text.append(letter.getUnicode());
                down = Math.max(down, letter.getYDirAdj());
            } else if (part instanceof PDMarkedContent inner) {
                gather(inner, marks);
            }
        }
        if (content.getMCID() >= 0 && down > 0) {
            marks.merge(content.getMCID(), new Lowest(down, text.toString()), Lowest::lower);
        }
    }

    private record Lowest(double down, String text) implements Comparable<Lowest> {
        Lowest lower(Lowest other) {
            return down >= other.down ? this : other;
        }

        @Override
        public int compareTo(Lowest other) {
            return Double.compare(down, other.down);
        }
    }
}

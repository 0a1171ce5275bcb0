package cyclepacket.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The order in which a page is read aloud: that of its text. The renderer hangs whatever floats (a heading beside its
 * text, a picture beside its step) behind the last page of the structure, last one first. So the elements are numbered
 * before layout, in the language attribute, the only one of theirs that reaches the structure; afterwards what floats
 * goes back to its place, and each language is what the page said.
 */
final class ReadingOrder {
    private static final Set<String> NUMBERED =
            Set.of("div", "h1", "h2", "h3", "h4", "p", "ul", "ol", "li", "table", "th", "td", "svg");

    private static final String MARK = "x-";

    /** What stands before every number. */
    private static final int NONE = -1;

    /** The number of the element around each, in the order of the text; {@link #NONE} for an outermost one. */
    private final List<Integer> parents = new ArrayList<>();

    private final List<String> languages = new ArrayList<>();
    /** Where each element stands in the structure: its first part when it goes over pages. */
    private final Map<Integer, PDStructureElement> placed = new HashMap<>();

    private final List<Stray> strays = new ArrayList<>();
    private final Map<COSDictionary, Integer> numbers = new IdentityHashMap<>();

    private ReadingOrder() {}

    /** Numbers the elements of a page that is not laid out yet. */
    static ReadingOrder prepare(Document page) {
        ReadingOrder order = new ReadingOrder();
        order.number(page.getDocumentElement(), NONE);
        return order;
    }

    private void number(Element element, int parent) {
        int own = parent;
        if (NUMBERED.contains(Tree.name(element))) {
            own = parents.size();
            parents.add(parent);
            languages.add(element.getAttribute("lang"));
            element.setAttribute("lang", MARK + own);
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                number(inner, own);
            }
        }
    }

    /** Puts each element of the laid-out document where its text stands. */
    void apply(PDDocument document) {
        PDStructureNode root = document.getDocumentCatalog().getStructureTreeRoot();
        if (root == null) {
            return;
        }
        walk(root, List.of());
        strays.removeIf(stray -> stray.above().contains(home(stray.number()).orElse(NONE)));
        strays.forEach(stray -> stray.from().setKids(kids(stray.from(), stray.element())));
        strays.sort(Comparator.comparingInt(Stray::number));
        for (Stray stray : strays) {
            PDStructureNode home =
                    home(stray.number()).<PDStructureNode>map(placed::get).orElse(stray.from());
            List<Object> kids = home.getKids();
            kids.add(indexOfLater(kids, stray.number()), stray.element());
            home.setKids(kids);
            stray.element().setParent(home);
        }
        sort(root);
    }

    /** What is drawn on a layer of its own is painted, and hung up, behind its neighbours. */
    private void sort(PDStructureNode node) {
        List<Object> kids = node.getKids();
        List<Keyed> keyed = new ArrayList<>();
        int last = NONE;
        boolean isSorted = true;
        for (Object kid : kids) {
            int number = kid instanceof PDStructureElement element ? first(element) : NONE;
            isSorted &= number == NONE || number >= last;
            last = number == NONE ? last : number;
            keyed.add(new Keyed(last, kid));
        }
        if (!isSorted) {
            keyed.sort(Comparator.comparingInt(Keyed::number));
            node.setKids(keyed.stream().map(Keyed::kid).toList());
        }
        for (Object kid : kids) {
            if (kid instanceof PDStructureElement element) {
                sort(element);
            }
        }
    }

    /** Something in the structure, and the number at which it is read; words go with what stands before them. */
    private record Keyed(int number, Object kid) {}

    /** An element, what holds it in the structure, and the numbers of all that do. */
    private record Stray(int number, PDStructureElement element, PDStructureNode from, List<Integer> above) {}

    private void walk(PDStructureNode node, List<Integer> above) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                int number = unmark(element);
                List<Integer> inside = above;
                if (number != NONE) {
                    placed.putIfAbsent(number, element);
                    numbers.put(element.getCOSObject(), number);
                    strays.add(new Stray(number, element, node, above));
                    inside = new ArrayList<>(above);
                    inside.add(number);
                }
                walk(element, inside);
            }
        }
    }

    /** Takes the number off an element of the structure, and gives it the language it has on the page. */
    private int unmark(PDStructureElement element) {
        String language = element.getLanguage();
        if (language == null || !language.startsWith(MARK)) {
            return NONE;
        }
        int number = Integer.parseInt(language.substring(MARK.length()));
        if (languages.get(number).isEmpty()) {
            element.getCOSObject().removeItem(COSName.LANG);
        } else {
            element.setLanguage(languages.get(number));
        }
        return number;
    }

    /** The nearest element around it on the page that is in the structure. */
    private Optional<Integer> home(int number) {
        int parent = parents.get(number);
        while (parent != NONE && !placed.containsKey(parent)) {
            parent = parents.get(parent);
        }
        return parent == NONE ? Optional.empty() : Optional.of(parent);
    }

    private static List<Object> kids(PDStructureNode node, PDStructureElement without) {
        List<Object> kids = node.getKids();
        kids.removeIf(kid -> kid instanceof PDStructureElement other && other.getCOSObject() == without.getCOSObject());
        return kids;
    }

    /** Before the first that comes later in the text; behind words without a number. */
    private int indexOfLater(List<Object> kids, int number) {
        for (int at = 0; at < kids.size(); at++) {
            if (kids.get(at) instanceof PDStructureElement element && first(element) > number) {
                return at;
            }
        }
        return kids.size();
    }

    /** The lowest number in an element; {@link #NONE} where there is none. */
    private int first(PDStructureElement element) {
        Integer own = numbers.get(element.getCOSObject());
        if (own != null) {
            return own;
        }
        int lowest = NONE;
        for (Object kid : element.getKids()) {
            int inner = kid instanceof PDStructureElement deeper ? first(deeper) : NONE;
            if (inner != NONE && (lowest == NONE || inner < lowest)) {
                lowest = inner;
            }
        }
        return lowest;
    }
}

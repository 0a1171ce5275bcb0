package cyclepacket.pdf;

import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Keeps the language of a passage inside a line. The renderer leaves an inline element that holds one text out of the
 * structure, and its language with it; inside a second one it stays.
 */
final class Passages {
    private static final Set<String> INLINE = Set.of("span", "strong", "em", "b", "i", "small");

    private Passages() {}

    /** Before layout; a page without such a passage stays as it is. */
    static void prepare(Document document) {
        for (Element element : Tree.elements(document.getDocumentElement())) {
            if (element.hasAttribute("lang") && INLINE.contains(Tree.name(element))) {
                wrapContents(element);
            }
        }
    }

    private static void wrapContents(Element passage) {
        Element inner = Tree.make(passage.getOwnerDocument(), "span");
        inner.setAttribute("lang", passage.getAttribute("lang"));
        while (passage.getFirstChild() != null) {
            inner.appendChild(passage.getFirstChild());
        }
        passage.appendChild(inner);
    }
}

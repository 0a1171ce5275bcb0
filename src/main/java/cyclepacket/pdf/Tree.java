package cyclepacket.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Walks over a document tree. */
final class Tree {
    private Tree() {}

    /** Every element from the given one on, itself first, in the order of the text. */
    static List<Element> elements(Element top) {
        List<Element> found = new ArrayList<>();
        collect(top, found);
        return found;
    }

    private static void collect(Element element, List<Element> found) {
        found.add(element);
        for (Element child : children(element)) {
            collect(child, found);
        }
    }

    static List<Element> children(Element parent) {
        List<Element> found = new ArrayList<>();
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child) {
                found.add(child);
            }
        }
        return found;
    }

    /** The first child element of that name, made and put first when there is none. */
    static Element childNamed(Element parent, String name) {
        return find(parent, name).orElseGet(() -> {
            Element made = make(parent.getOwnerDocument(), name);
            parent.insertBefore(made, parent.getFirstChild());
            return made;
        });
    }

    static Optional<Element> find(Element parent, String name) {
        return children(parent).stream()
                .filter(child -> name(child).equals(name))
                .findFirst();
    }

    static Element make(Document document, String name) {
        return document.createElementNS(document.getDocumentElement().getNamespaceURI(), name);
    }

    /** The name without prefix, in lower case. */
    static String name(Element element) {
        String local = element.getLocalName() == null ? element.getTagName() : element.getLocalName();
        return local.toLowerCase(Locale.ROOT);
    }
}

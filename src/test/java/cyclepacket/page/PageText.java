package cyclepacket.page;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A written page, taken apart for tests. */
final class PageText {
    private static final Set<String> BLOCKS =
            Set.of("p", "li", "h1", "h2", "h3", "th", "td", "div", "table", "tr", "ul", "ol");
    private final Document document;

    private PageText(Document document) {
        this.document = document;
    }

    static PageText of(String xhtml) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return new PageText(factory.newDocumentBuilder().parse(new InputSource(new StringReader(xhtml))));
    }

    /** All elements of one name, in order. */
    List<Element> all(String name) {
        NodeList found = document.getElementsByTagNameNS("*", name);
        List<Element> elements = new ArrayList<>();
        for (int index = 0; index < found.getLength(); index++) {
            elements.add((Element) found.item(index));
        }
        return elements;
    }

    /** The elements below the one with this id. */
    List<Element> part(String id) {
        return all("div").stream()
                .filter(div -> div.getAttribute("id").equals(id))
                .toList();
    }

    List<Element> parts() {
        return all("div").stream()
                .filter(div -> List.of(div.getAttribute("class").split(" ")).contains("part"))
                .toList();
    }

    String text() {
        return text(all("body").get(0));
    }

    /** Text with one space between blocks; no-break spaces are kept. What runs above the pages is no text of a part. */
    static String text(Node node) {
        StringBuilder text = new StringBuilder();
        collect(node, text);
        return text.toString().replaceAll("[ \\t\\r\\n]+", " ").trim();
    }

    private static void collect(Node node, StringBuilder text) {
        boolean block = node instanceof Element element && BLOCKS.contains(element.getLocalName());
        if (block) {
            text.append(' ');
        }
        if (node.getNodeType() == Node.TEXT_NODE) {
            text.append(node.getNodeValue());
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            boolean runs = child instanceof Element element
                    && element.getAttribute("class").equals("head");
            if (!runs) {
                collect(child, text);
            }
        }
        if (block) {
            text.append(' ');
        }
    }

    /** The running text: paragraphs and list items, without headings, tables of values and running lines. */
    List<String> running() {
        List<String> found = new ArrayList<>();
        for (String name : List.of("p", "li")) {
            for (Element element : all(name)) {
                if (!isInside(element, "head", "foot", "door-head", "door-foot")) {
                    found.add(text(element));
                }
            }
        }
        return found.stream().filter(text -> !text.isBlank()).toList();
    }

    static boolean isInside(Element element, String... classes) {
        for (Node up = element; up instanceof Element; up = up.getParentNode()) {
            List<String> own = List.of(((Element) up).getAttribute("class").split(" "));
            if (Set.of(classes).stream().anyMatch(own::contains)) {
                return true;
            }
        }
        return false;
    }

    static Optional<Element> parent(Element element, String name) {
        for (Node up = element; up instanceof Element; up = up.getParentNode()) {
            if (((Element) up).getLocalName().equals(name)) {
                return Optional.of((Element) up);
            }
        }
        return Optional.empty();
    }
}

package cyclepacket.page;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The texts of a written packet, one by one, in the order in which they are read; a table's row is one text. */
final class PageBlocks {
    private static final Set<String> SKIPPED =
            Set.of("head", "foot", "door-head", "door-foot", "across-band", "contents", "foreign", "page-ref");

    /** Between two cells of a row; a slash beside an amount can be misread. */
    private static final String CELL = " \u00b7 ";

    private static final Pattern EMPTY_CELLS = Pattern.compile("(?:[ \u00a0]*\u00b7[ \u00a0]*){2,}");
    private static final Pattern EMPTY_ENDS = Pattern.compile("^[ \u00a0\u00b7]+|[ \u00a0\u00b7]+$");

    /** A kind of block and its text. */
    record Block(String kind, String text) {}

    private final List<Block> blocks = new ArrayList<>();

    private PageBlocks() {}

    static List<Block> of(String xhtml) {
        PageBlocks found = new PageBlocks();
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            Element html = factory.newDocumentBuilder()
                    .parse(new InputSource(new StringReader(xhtml)))
                    .getDocumentElement();
            found.walk((Element) html.getElementsByTagName("body").item(0));
        } catch (ParserConfigurationException | SAXException | IOException broken) {
            throw new TemplateFault("a written page is no XHTML", broken);
        }
        return found.blocks;
    }

    private void walk(Element element) {
        if (isSkipped(element)) {
            return;
        }
        String kind = kind(element.getTagName());
        if (!kind.isEmpty()) {
            add(kind, element);
            return;
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                walk(inner);
            }
        }
    }

    /** What stands around the text, or points to a page of the packet: on other pages it says nothing. */
    private static boolean isSkipped(Element element) {
        return Set.of(element.getAttribute("class").split(" ")).stream().anyMatch(SKIPPED::contains);
    }

    private static String kind(String tag) {
        return switch (tag) {
            case "h1" -> "part";
            case "h2", "h3" -> "heading";
            case "p" -> "text";
            case "li" -> "item";
            case "tr" -> "row";
            default -> "";
        };
    }

    private void add(String kind, Element element) {
        StringBuilder text = new StringBuilder();
        collect(element, text);
        String read = text.toString().replaceAll("[ \\t\\r\\n]+", " ");
        String filled =
                EMPTY_ENDS.matcher(EMPTY_CELLS.matcher(read).replaceAll(CELL)).replaceAll("");
        blocks.add(new Block(kind, filled.strip()));
    }

    private static void collect(Node node, StringBuilder text) {
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child.getNodeType() == Node.TEXT_NODE) {
                text.append(child.getNodeValue());
            } else if (child instanceof Element inner && !isSkipped(inner)) {
                boolean isCell = Set.of("th", "td").contains(inner.getTagName());
                boolean isApart = isCell || Set.of("p", "li", "br", "span").contains(inner.getTagName());
                text.append(
                        isCell && text.length() > 0
                                ? CELL
                                : isApart && !inner.getTagName().equals("span") ? " " : "");
                collect(inner, text);
            }
        }
    }
}

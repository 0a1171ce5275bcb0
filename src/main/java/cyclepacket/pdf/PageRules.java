package cyclepacket.pdf;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;

/** What must hold in a page before it is laid out. */
final class PageRules {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final Pattern FOREIGN_URL =
            Pattern.compile("url\\(\\s*[\"']?\\s*(?!#)([^\"')]+)|@import\\s+([^;]+)", Pattern.CASE_INSENSITIVE);
    /** Elements that would load or run something of their own. */
    private static final Set<String> FOREIGN = Set.of("script", "foreignobject", "iframe", "object", "embed", "applet");

    private final GlyphRule glyphs;
    private final StyleText styles;
    private final TemplateGate gate;
    private final Place place;
    private final List<Finding> findings = new ArrayList<>();

    PageRules(GlyphRule glyphs, StyleText styles, TemplateGate gate, Place place) {
        this.glyphs = glyphs;
        this.styles = styles;
        this.gate = gate;
        this.place = place;
    }

    List<Finding> check(Document document) {
        Element top = document.getDocumentElement();
        findings.addAll(glyphs.check(Tree.find(top, "body").orElse(top).getTextContent()));
        for (Element element : Tree.elements(top)) {
            checkElement(element);
        }
        return List.copyOf(findings);
    }

    private void checkElement(Element element) {
        String name = Tree.name(element);
        if (FOREIGN.contains(name)) {
            gate.refuse("the element " + name);
        }
        if (name.equals("img") || name.equals("svg") && !isInsideDrawing(element)) {
            checkPicture(element, name);
        }
        if (name.equals("style")) {
            findings.addAll(styles.check(element.getTextContent()));
        }
        if (SVG.equals(element.getNamespaceURI())) {
            checkDrawing(element, name);
        }
    }

    private static boolean isInsideDrawing(Element element) {
        return element.getParentNode() instanceof Element parent && SVG.equals(parent.getNamespaceURI());
    }

    private void checkPicture(Element element, String name) {
        if (element.getAttribute("alt").isBlank()) {
            findings.add(Finding.stop(
                    "ALT-MISSING",
                    place,
                    "a picture (" + name + ") has no alt text, so a person who cannot see it is told nothing",
                    "write an alt attribute that says what the picture shows"));
        }
        if (element.getAttribute("src").toLowerCase(java.util.Locale.ROOT).endsWith(".svg")) {
            findings.add(Finding.stop(
                    "DRAWING-NOT-INLINE",
                    place,
                    "the drawing " + element.getAttribute("src") + " is a file of its own, so its text is not checked",
                    "put the svg element itself into the page"));
        }
    }

    /** The drawing library resolves addresses by itself, so a drawing may not hold any but its own parts. */
    private void checkDrawing(Element element, String name) {
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Attr attribute = (Attr) attributes.item(i);
            boolean isLink = "href".equals(attribute.getLocalName()) || "src".equals(attribute.getLocalName());
            if (isLink && !attribute.getValue().strip().startsWith("#")) {
                gate.refuse(attribute.getValue());
            }
            refuseForeignUrls(attribute.getValue());
        }
        if (name.equals("style")) {
            refuseForeignUrls(element.getTextContent());
        }
    }

    private void refuseForeignUrls(String css) {
        // The outlines of a drawing are long and hold neither.
        if (css.indexOf('(') < 0 && css.indexOf('@') < 0) {
            return;
        }
        FOREIGN_URL
                .matcher(css)
                .results()
                .forEach(found -> gate.refuse(found.group(1) != null ? found.group(1) : found.group(2)));
    }
}

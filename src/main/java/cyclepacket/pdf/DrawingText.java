package cyclepacket.pdf;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Turns the words inside a drawing into outlines of the shipped fonts. The drawing library would set them in
 * whatever fonts the computer has, so two computers would print two different pages. A reader is told the words by
 * the drawing's alt text.
 */
final class DrawingText {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final Pattern SIZE = Pattern.compile("(\\d+(?:\\.\\d+)?)(?:px)?");
    private static final Pattern LENGTH = Pattern.compile("-?\\d+(?:\\.\\d+)?");
    private static final List<String> SPENT =
            List.of("x", "y", "font-size", "font-weight", "font-family", "text-anchor");

    private final FontShelf fonts;
    private final Place place;
    private final List<Finding> findings = new ArrayList<>();

    DrawingText(FontShelf fonts, Place place) {
        this.fonts = fonts;
        this.place = place;
    }

    List<Finding> outline(Document document) {
        for (Element element : Tree.elements(document.getDocumentElement())) {
            if (SVG.equals(element.getNamespaceURI()) && Tree.name(element).equals("text")) {
                replace(element);
            }
        }
        return List.copyOf(findings);
    }

    private void replace(Element text) {
        Optional<Double> size = size(text);
        boolean isPlaced = isLength(text.getAttribute("x")) && isLength(text.getAttribute("y"));
        if (size.isEmpty() || !isPlaced || !Tree.children(text).isEmpty()) {
            findings.add(Finding.stop(
                    "DRAWING-TEXT",
                    place,
                    "words in a drawing need x, y and font-size as plain numbers and no parts inside: "
                            + text.getTextContent().strip(),
                    "write one text element for each piece, with x, y and font-size"));
            return;
        }
        Element path = text.getOwnerDocument().createElementNS(SVG, "path");
        for (int i = 0; i < text.getAttributes().getLength(); i++) {
            Node attribute = text.getAttributes().item(i);
            if (!SPENT.contains(attribute.getNodeName())) {
                path.setAttribute(attribute.getNodeName(), attribute.getNodeValue());
            }
        }
        path.setAttribute("d", outlines(text, size.get()));
        text.getParentNode().replaceChild(path, text);
    }

    private String outlines(Element text, double size) {
        GlyphRun run = new GlyphRun(fonts, isBold(text) ? 700 : 400, size);
        String words = text.getTextContent().strip().replaceAll("\\s+", " ");
        try {
            double shift = switch (inherited(text, "text-anchor").orElse("start")) {
                case "middle" -> run.widthOf(words) / 2;
                case "end" -> run.widthOf(words);
                default -> 0;
            };
            return run.outlinesOf(words, number(text, "x") - shift, number(text, "y"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isBold(Element text) {
        return inherited(text, "font-weight")
                .filter(weight -> weight.equals("bold") || weight.matches("[6-9]00"))
                .isPresent();
    }

    private static Optional<Double> size(Element text) {
        return inherited(text, "font-size")
                .map(SIZE::matcher)
                .filter(Matcher::matches)
                .map(match -> Double.valueOf(match.group(1)));
    }

    /** SVG takes a missing place for 0. */
    private static boolean isLength(String written) {
        return written.isEmpty() || LENGTH.matcher(written).matches();
    }

    private static double number(Element text, String name) {
        String written = text.getAttribute(name);
        return written.isEmpty() ? 0 : Double.parseDouble(written);
    }

    /** The attribute of the element or of the nearest element around it that has one. */
    private static Optional<String> inherited(Element text, String name) {
        for (Node node = text; node instanceof Element element; node = node.getParentNode()) {
            String value = element.getAttribute(name).strip();
            if (!value.isEmpty()) {
                return Optional.of(value);
            }
        }
        return Optional.empty();
    }
}

package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.packet.PrintedDemo;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Words and numbers inside drawings are outlines, which no reader of a PDF takes for letters: their size is the one that the
 * drawing gives them, times how large the drawing stands on the paper by the structure of the PDF. Clear print: 12 point;
 * large print: 18 (UKAAF G003, 2019).
 */
class DrawingTypeTest {
    /** A drawing's box on the paper is rounded to dots. */
    private static final double ROUNDING = 0.1;

    /** The numbers on a syringe stand as close as its marks; the mark to draw to is printed beside it in the size of print. */
    private static final double TRUE_SIZE = 12;

    private record Figure(String alt, double width, double height) {}

    @ParameterizedTest
    @ValueSource(
            strings = {
                "SM-04417-issue-3 en standard letter 12",
                "EF-07318 en standard letter 12",
                "LM-06233 en standard letter 12",
                "LS-09102 en standard letter 12",
                "EF-07318-issue-2 en large letter 18",
                "SM-04417-issue-3 en large A4 18",
                "LM-06233-issue-2 es large A4 18",
                "LS-09102 es large letter 18"
            })
    void setsNoWordOfADrawingBelowTheSizeOfThePrint(String name) throws Exception {
        String[] parts = name.split(" ");
        PrintedDemo.Packet packet = PrintedDemo.of(parts[0], parts[1], parts[2], parts[3]);
        List<Element> drawings = new ArrayList<>(PageText.of(packet.xhtml()).all("svg"));
        List<Figure> figures = figures(packet.pdf());
        assertTrue(figures.size() > 1, "figures");
        double least = Double.parseDouble(parts[4]);
        List<String> small = new ArrayList<>();
        int words = 0;
        for (Figure figure : figures) {
            Element drawing = drawings.stream()
                    .filter(each -> each.getAttribute("alt").equals(figure.alt()))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no drawing for " + figure));
            drawings.remove(drawing);
            String[] box = drawing.getAttribute("viewBox").split("[ ,]+");
            // A drawing keeps its proportions: the smaller of both scales is the one it is drawn with.
            double scale =
                    Math.min(figure.width() / Double.parseDouble(box[2]), figure.height() / Double.parseDouble(box[3]));
            double own = isTrueSize(drawing) ? Math.min(least, TRUE_SIZE) : least;
            for (Element text : texts(drawing)) {
                words++;
                double size = size(text) * scale;
                if (size < own - ROUNDING) {
                    small.add(text.getTextContent() + " at " + size + " in: " + figure.alt());
                }
            }
        }
        assertTrue(words > 0, "no drawing has a word");
        assertEquals(List.of(), small);
    }

    private static boolean isTrueSize(Element drawing) {
        return PageText.isInside((Element) drawing.getParentNode(), "true-size");
    }

    private static List<Element> texts(Element drawing) {
        List<Element> texts = new ArrayList<>();
        for (int at = 0; at < drawing.getElementsByTagNameNS("*", "text").getLength(); at++) {
            texts.add((Element) drawing.getElementsByTagNameNS("*", "text").item(at));
        }
        return texts;
    }

    /** In the units of the drawing, with the scales of the groups around it. */
    private static double size(Element text) {
        double size = 0;
        double scale = 1;
        for (Node up = text;
                up instanceof Element element && !element.getLocalName().equals("svg");
                up = up.getParentNode()) {
            if (size == 0 && !element.getAttribute("font-size").isEmpty()) {
                size = Double.parseDouble(element.getAttribute("font-size"));
            }
            String transform = element.getAttribute("transform");
            if (transform.contains("scale(")) {
                String factor = transform.replaceFirst(".*scale\\(\\s*(-?[0-9.]+).*", "$1");
                scale *= Math.abs(Double.parseDouble(factor));
            }
        }
        if (size == 0) {
            Element svg = PageText.parent(text, "svg").orElseThrow();
            size = Double.parseDouble(svg.getAttribute("font-size"));
        }
        return size * scale;
    }

    private static List<Figure> figures(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<Figure> figures = new ArrayList<>();
            collect(document.getDocumentCatalog().getStructureTreeRoot(), figures);
            return figures;
        }
    }

    private static void collect(PDStructureNode node, List<Figure> figures) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                if (element.getStructureType().equals("Figure")) {
                    COSDictionary layout =
                            (COSDictionary) element.getCOSObject().getDictionaryObject(COSName.A);
                    PDRectangle box = new PDRectangle((COSArray) layout.getDictionaryObject(COSName.BBOX));
                    figures.add(new Figure(element.getAlternateDescription(), box.getWidth(), box.getHeight()));
                }
                collect(element, figures);
            }
        }
    }
}

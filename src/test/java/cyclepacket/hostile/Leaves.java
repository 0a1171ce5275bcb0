package cyclepacket.hostile;

import cyclepacket.packet.Outcome;
import cyclepacket.pdf.TaggedOrder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * What a printed issue consists of.
 *
 * @param elements of the page before it was laid out, with the names of their attributes, in their order
 * @param words of the page and of its attributes, the issue code left out
 * @param tags of the chart copy's PDF, how many of each; spans are left out, the renderer makes one more where a line breaks
 * @param chart what the chart copy says in the order of its tags, without spaces: letters of other widths break lines and
 *     pages elsewhere. Without the heads of tables, which are said once more on each page, and the columns of findings,
 *     since a word with signs may need quotes in its file
 */
record Leaves(List<String> elements, String words, Map<String, Integer> tags, String chart) {
    private static final String SIGNS = "<>&$#{}[]\"'=/*@!\\;";

    /** Every sign that could mean something to a template, a page or a style sheet, as a capital: initials stay themselves. */
    static String inLetters(String text) {
        StringBuilder letters = new StringBuilder(text);
        for (int at = 0; at < letters.length(); at++) {
            if (SIGNS.indexOf(letters.charAt(at)) >= 0) {
                letters.setCharAt(at, 'Z');
            }
        }
        return letters.toString();
    }

    static Leaves of(Outcome.Written issue) throws IOException {
        List<String> elements = new ArrayList<>();
        StringBuilder words = new StringBuilder();
        collect(page(issue.folder().resolve("packet.xhtml")).getDocumentElement(), elements, words);
        byte[] chart = Files.readAllBytes(issue.folder().resolve("chart.pdf"));
        return new Leaves(
                elements, neutral(words.toString(), issue.code()), tags(chart), neutral(said(chart), issue.code()));
    }

    private static String said(byte[] pdf) throws IOException {
        return TaggedOrder.of(pdf).stream()
                .filter(said -> !said.role().equals("TH"))
                .map(TaggedOrder.Said::text)
                .collect(Collectors.joining())
                .replaceAll("\\s", "")
                .replaceAll("(\\.yaml:\\d+):\\d+", "$1");
    }

    private static String neutral(String words, String code) {
        return inLetters(words.replace(code, "CODE"));
    }

    private static Document page(Path file) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            String page = Files.readString(file)
                    .replaceFirst("(?i)<!DOCTYPE html>", "")
                    .strip();
            return factory.newDocumentBuilder().parse(new org.xml.sax.InputSource(new java.io.StringReader(page)));
        } catch (ParserConfigurationException | SAXException broken) {
            throw new AssertionError("the page is broken", broken);
        }
    }

    private static void collect(Element element, List<String> elements, StringBuilder words) {
        StringBuilder shape = new StringBuilder(element.getNodeName());
        for (int at = 0; at < element.getAttributes().getLength(); at++) {
            Node attribute = element.getAttributes().item(at);
            shape.append(' ').append(attribute.getNodeName());
            words.append(attribute.getNodeValue()).append('\n');
        }
        elements.add(shape.toString());
        if (element.getNodeName().equals("style")) {
            return;
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                collect(inner, elements, words);
            } else {
                words.append(child.getNodeName().equals("#text") ? "" : child.getNodeName())
                        .append(child.getNodeValue());
            }
        }
    }

    private static Map<String, Integer> tags(byte[] pdf) throws IOException {
        Map<String, Integer> tags = new TreeMap<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            count(document.getDocumentCatalog().getStructureTreeRoot(), tags);
        }
        return tags;
    }

    private static void count(PDStructureNode node, Map<String, Integer> tags) {
        for (Object child : node.getKids()) {
            if (child instanceof PDStructureElement element) {
                if (!element.getStructureType().equals("Span")) {
                    tags.merge(element.getStructureType(), 1, Integer::sum);
                }
                count(element, tags);
            }
        }
    }

    void assertSame(Leaves other) {
        same("elements", String.join("\n", elements), String.join("\n", other.elements));
        same("words", words, other.words);
        same("tags", tags.toString(), other.tags.toString());
        same("chart", chart, other.chart);
    }

    private static void same(String what, String one, String other) {
        int at = 0;
        while (at < Math.min(one.length(), other.length()) && one.charAt(at) == other.charAt(at)) {
            at++;
        }
        if (at < one.length() || at < other.length()) {
            throw new AssertionError(what + " differ: ..." + around(one, at) + "... and ..." + around(other, at));
        }
    }

    private static String around(String text, int at) {
        return text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 60));
    }
}

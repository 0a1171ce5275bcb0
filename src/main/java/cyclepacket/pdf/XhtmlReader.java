package cyclepacket.pdf;

import cyclepacket.finding.Checked;
import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.io.IOException;
import java.io.StringReader;
import java.text.Normalizer;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** XHTML text to a document tree, with no way to name anything outside that text. */
final class XhtmlReader {
    /** The bare HTML document type says nothing and names nothing; every other one is refused by the parser. */
    private static final Pattern BARE_DOCTYPE =
            Pattern.compile("^(\\s*)<!DOCTYPE\\s+html\\s*>", Pattern.CASE_INSENSITIVE);

    /** The block of marks that combine with the letter before them. */
    private static final char FIRST_MARK = '\u0300';

    private static final char LAST_MARK = '\u036f';

    private XhtmlReader() {}

    static Checked<Document> read(String xhtml, Place place) {
        String body = joined(BARE_DOCTYPE.matcher(xhtml).replaceFirst("$1").stripLeading());
        try {
            return Checked.of(builder().parse(new InputSource(new StringReader(body))), List.of());
        } catch (SAXParseException e) {
            return Checked.refused(List.of(broken(place, e.getLineNumber(), e.getColumnNumber())));
        } catch (SAXException e) {
            return Checked.refused(List.of(broken(place, 0, 0)));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /**
     * Letters joined with the marks that stand behind them (normalization form C, UAX 15): the renderer would print a mark
     * through a capital letter, and some programs write names that way.
     */
    private static String joined(String text) {
        for (int at = 0; at < text.length(); at++) {
            if (text.charAt(at) >= FIRST_MARK && text.charAt(at) <= LAST_MARK) {
                return Normalizer.normalize(text, Normalizer.Form.NFC);
            }
        }
        return text;
    }

    /** The parser's own words are left out: they change with the language of the computer. */
    private static Finding broken(Place place, int line, int column) {
        return Finding.stop(
                "XHTML-BROKEN",
                place,
                "the page is not well-formed XHTML, or has a document type, at line " + line + ", column " + column,
                "mend the template that made the page");
    }

    private static DocumentBuilder builder() {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setNamespaceAware(true);
        factory.setXIncludeAware(false);
        factory.setExpandEntityReferences(false);
        try {
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new Thrower());
            return builder;
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("this Java has no safe XML parser", e);
        }
    }

    /** Throws every error; the default handler prints to the error stream first. */
    private static final class Thrower implements ErrorHandler {
        @Override
        public void warning(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void error(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXException {
            throw e;
        }
    }
}

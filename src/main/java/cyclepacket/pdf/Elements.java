package cyclepacket.pdf;

import com.openhtmltopdf.css.extend.StylesheetFactory;
import com.openhtmltopdf.css.sheet.StylesheetInfo;
import com.openhtmltopdf.simple.extend.XhtmlNamespaceHandler;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.w3c.dom.Element;

/**
 * What the renderer asks about an element, answered fast; one for each document, used by one thread. Every rule of a
 * style sheet asks every element for its class, hundreds of times in a row, and each answer from the document tree is
 * a search: that was an eighth of all processor time.
 */
final class Elements extends XhtmlNamespaceHandler {
    private static final String SHEET = "elements.css";

    private final UsedStyles used;
    private Element last;
    private String lastClass = "";

    Elements(UsedStyles used) {
        this.used = used;
    }

    @Override
    public String getClass(Element element) {
        if (element != last) {
            lastClass = super.getClass(element);
            last = element;
        }
        return lastClass;
    }

    /** How the elements look before any style sheet speaks: those of a printed page, not of forms and browsers. */
    @Override
    public StylesheetInfo getDefaultStylesheet(StylesheetFactory factory) {
        StylesheetInfo info = new StylesheetInfo();
        info.setUri("classpath:" + SHEET);
        info.setOrigin(StylesheetInfo.USER_AGENT);
        info.setMedia("all");
        info.setType("text/css");
        try (InputStream sheet = Elements.class.getResourceAsStream(SHEET)) {
            String rules = used.in(new String(sheet.readAllBytes(), StandardCharsets.UTF_8));
            info.setStylesheet(factory.parse(new StringReader(rules), info));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return info;
    }
}

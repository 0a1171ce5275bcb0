package cyclepacket.pdf;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * The rules of a style sheet that some element of a page can meet. The renderer asks every rule about every element,
 * and a packet has parts for all medicine forms in one sheet; a third of all rules are about forms it does not show.
 */
final class UsedStyles {
    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
    /** A class, or an element at the start of a simple selector. */
    private static final Pattern NAME = Pattern.compile("\\.([A-Za-z_-][\\w-]*)|(?<![\\w.:#()-])([A-Za-z][\\w-]*)");

    private final Set<String> classes = new HashSet<>();
    private final Set<String> elements = new HashSet<>();

    private UsedStyles(Document page) {
        for (Element element : Tree.elements(page.getDocumentElement())) {
            elements.add(Tree.name(element));
            String own = element.getAttribute("class");
            if (!own.isEmpty()) {
                classes.addAll(Set.of(own.strip().split("\\s+")));
            }
        }
    }

    static UsedStyles of(Document page) {
        return new UsedStyles(page);
    }

    /** Shortens the style sheets in the page itself. */
    void shorten(Document page) {
        for (Element element : Tree.elements(page.getDocumentElement())) {
            if (Tree.name(element).equals("style")) {
                element.setTextContent(in(element.getTextContent()));
            }
        }
    }

    /** The same style sheet without the rules that nothing in the page can meet; rules with an @ stay as they are. */
    String in(String css) {
        String rest = COMMENT.matcher(css).replaceAll(" ");
        StringBuilder used = new StringBuilder(rest.length());
        int at = 0;
        for (int open = rest.indexOf('{'); open >= 0; open = rest.indexOf('{', at)) {
            int end = endOfBlock(rest, open);
            String selectors = rest.substring(at, open);
            String kept = selectors.strip().startsWith("@") ? selectors : met(selectors);
            if (!kept.isEmpty()) {
                used.append(kept).append(rest, open, end);
            }
            at = end;
        }
        return used.append(rest.substring(at)).toString();
    }

    private String met(String selectors) {
        // A selector that asks for attributes may hold any character between quotes.
        if (selectors.indexOf('[') >= 0 || selectors.indexOf('\\') >= 0) {
            return selectors;
        }
        StringBuilder kept = new StringBuilder();
        for (String selector : selectors.split(",")) {
            if (isMet(selector)) {
                kept.append(kept.isEmpty() ? "" : ",").append(selector);
            }
        }
        return kept.toString();
    }

    private boolean isMet(String selector) {
        Matcher names = NAME.matcher(selector);
        while (names.find()) {
            boolean isThere = names.group(1) != null
                    ? classes.contains(names.group(1))
                    : elements.contains(names.group(2).toLowerCase(Locale.ROOT));
            if (!isThere) {
                return false;
            }
        }
        return true;
    }

    /** Past the brace that closes the block; braces between quotes are text. */
    private static int endOfBlock(String css, int open) {
        int depth = 0;
        char quote = 0;
        for (int i = open; i < css.length(); i++) {
            char c = css.charAt(i);
            if (quote != 0) {
                i += c == '\\' ? 1 : 0;
                quote = c == quote ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '{') {
                depth++;
            } else if (c == '}' && --depth == 0) {
                return i + 1;
            }
        }
        return css.length();
    }
}

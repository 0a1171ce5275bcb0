package cyclepacket.pdf;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Writes into the head of a page what the renderer reads there: title, subject, language and bookmarks. */
final class PageHead {
    private final Document document;
    private final Element head;

    private PageHead(Document document) {
        this.document = document;
        this.head = Tree.childNamed(document.getDocumentElement(), "head");
    }

    static void prepare(Document document, DocumentFacts facts) {
        PageHead page = new PageHead(document);
        document.getDocumentElement().setAttribute("lang", facts.language());
        LinkNames.prepare(document);
        Passages.prepare(document);
        Tree.childNamed(page.head, "title").setTextContent(facts.title());
        Element subject = Tree.make(document, "meta");
        subject.setAttribute("name", "subject");
        subject.setAttribute("content", facts.subject());
        page.head.appendChild(subject);
        if (Tree.find(page.head, "bookmarks").isEmpty()) {
            page.addBookmarks();
        }
    }

    /**
     * One bookmark for each heading of the first three levels, nested as the headings are. A bookmark is read in the
     * language of the document: an outline item has no entry for one of its own (ISO 32000-1, table 153; from memory).
     */
    private void addBookmarks() {
        Element bookmarks = Tree.make(document, "bookmarks");
        Deque<Level> open = new ArrayDeque<>();
        open.push(new Level(0, bookmarks));
        int count = 0;
        for (Element element : Tree.elements(document.getDocumentElement())) {
            String name = Tree.name(element);
            if (name.matches("h[1-3]")) {
                count++;
                addBookmark(open, element, name.charAt(1) - '0', count);
            }
        }
        if (count > 0) {
            head.appendChild(bookmarks);
        }
    }

    private void addBookmark(Deque<Level> open, Element heading, int depth, int number) {
        if (heading.getAttribute("id").isEmpty()) {
            heading.setAttribute("id", String.format(Locale.ROOT, "heading-%d", number));
        }
        while (open.element().depth() >= depth) {
            open.pop();
        }
        Element bookmark = Tree.make(document, "bookmark");
        bookmark.setAttribute("name", heading.getTextContent().strip().replaceAll("\\s+", " "));
        bookmark.setAttribute("href", "#" + heading.getAttribute("id"));
        open.element().element().appendChild(bookmark);
        open.push(new Level(depth, bookmark));
    }

    /** A bookmark that may still take in others; depth 0 is the list itself. */
    private record Level(int depth, Element element) {}
}

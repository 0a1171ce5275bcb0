package cyclepacket.pdf;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.PageBox;
import cyclepacket.finding.Finding;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * How much one document may ask of the renderer, which has no bound of its own: one block of a million inches took all
 * memory, and elements nested two thousand deep the whole stack. One for each document, used by one thread.
 */
final class LayoutLimits {
    /** Far from what is printed: a packet of the demo has at most 3,000 elements in 13 levels, on 23 sheets. */
    static final int MOST_ELEMENTS = 100_000;

    static final int MOST_LEVELS = 100;
    static final int MOST_SHEETS = 500;
    static final Duration LONGEST = Duration.ofSeconds(60);

    /** Asking the clock costs as much as measuring a word. */
    private static final int ASKED_EACH = 256;

    private final Duration longest;
    private final long start = System.nanoTime();
    private int measured;
    private long workedAtLimit = -1;

    LayoutLimits(Duration longest) {
        this.longest = longest;
    }

    /** Thrown through the renderer, which cannot be told to stop. */
    private static final class TooLong extends RuntimeException {
        private static final long serialVersionUID = 1L;

        TooLong() {
            super("the layout ran out of its time", null, false, false);
        }
    }

    /** Whether the tree is too large or too deep to be looked at; nothing may walk over it by itself before. */
    static Optional<Finding> ofTree(Document page) {
        int elements = 0;
        int level = 0;
        Node node = page.getDocumentElement();
        while (node != null) {
            elements += node instanceof Element ? 1 : 0;
            if (elements > MOST_ELEMENTS) {
                return Optional.of(tooMuch("the page has more than " + MOST_ELEMENTS + " elements"));
            }
            if (node.getFirstChild() != null) {
                node = node.getFirstChild();
                level++;
                if (level > MOST_LEVELS) {
                    return Optional.of(tooMuch(
                            "the page nests elements more than " + MOST_LEVELS + " levels deep" + in(partOf(node))));
                }
            } else {
                while (node != null && node.getNextSibling() == null) {
                    node = node.getParentNode();
                    level--;
                }
                node = node == null ? null : node.getNextSibling();
            }
        }
        return Optional.empty();
    }

    private static Optional<Element> partOf(Node node) {
        for (Node up = node; up != null; up = up.getParentNode()) {
            if (up instanceof Element element && element.hasAttribute("id")) {
                return Optional.of(element);
            }
        }
        return Optional.empty();
    }

    /** Lays the document out, before anything of it is drawn. */
    Optional<Finding> layOut(PdfBoxRenderer renderer) {
        try {
            renderer.layout();
        } catch (TooLong stopped) {
            return Optional.of(tooMuch("laying the page out takes longer than " + longest.toSeconds() + " s"));
        } catch (IllegalArgumentException noRoom) {
            // The renderer's own way to say that margins leave no room on the sheet.
            return Optional.of(Finding.stop(
                    "LAYOUT-TROUBLE",
                    Typesetter.TEMPLATES,
                    "the renderer says: " + noRoom.getMessage(),
                    "mend the style sheet"));
        }
        BlockBox root = renderer.getRootBox();
        List<PageBox> sheets = root.getLayer().getPages();
        if (sheets.size() <= MOST_SHEETS) {
            return Optional.empty();
        }
        int end = sheets.get(MOST_SHEETS - 1).getBottom();
        return Optional.of(tooMuch("the page fills " + sheets.size() + " sheets, and at most " + MOST_SHEETS
                + " are printed" + in(partBeyond(root, end))));
    }

    /** The named element that is still going on where the last sheet ends. */
    private static Optional<Element> partBeyond(Box box, int end) {
        for (int index = 0; index < box.getChildCount(); index++) {
            Box child = box.getChild(index);
            if (child.getAbsY() + child.getHeight() > end) {
                boolean isNamed =
                        child.getElement() != null && child.getElement().hasAttribute("id");
                return isNamed ? Optional.of(child.getElement()) : partBeyond(child, end);
            }
        }
        return Optional.empty();
    }

    private static String in(Optional<Element> part) {
        return part.map(element -> ", in the part " + element.getAttribute("id"))
                .orElse("");
    }

    /** Asked with every text that is measured. */
    void goOn() {
        measured++;
        if (measured % ASKED_EACH == 0 && System.nanoTime() - start > longest.toNanos() && hasWorkedAsLong()) {
            throw new TooLong();
        }
    }

    /** On a busy machine a layout waits more than it works; from the limit on only processor time counts. */
    private boolean hasWorkedAsLong() {
        long worked = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        if (workedAtLimit < 0) {
            workedAtLimit = worked;
        }
        return worked - workedAtLimit >= longest.toNanos();
    }

    private static Finding tooMuch(String text) {
        return Finding.stop(
                "LAYOUT-TOO-LONG",
                Typesetter.TEMPLATES,
                text,
                "mend the template or style sheet, or take back the last change to it");
    }
}

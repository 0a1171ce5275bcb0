package cyclepacket.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Where the text of a page stands, as boxes around its runs of letters: for text over text. */
public final class TextRuns extends PDFTextStripper {
    /** Parts of the type size that capitals rise above the baseline, and that tails hang below it. */
    private static final double RISE = 0.72;

    private static final double FALL = 0.2;

    /** Part of the type size that parts two runs. */
    private static final double GAP = 0.1;

    /** Points that two boxes may share before their letters touch. */
    private static final double TOUCH = 1;

    private final List<Run> runs = new ArrayList<>();

    /**
     * Letters on one baseline without a space between them, in points from the page's upper left corner.
     *
     * @param size of the type, in points
     */
    public record Run(String text, double left, double right, double baseline, double size) {
        boolean isUnder(Run other) {
            double across = Math.min(right, other.right) - Math.max(left, other.left);
            double down = Math.min(bottom(), other.bottom()) - Math.max(top(), other.top());
            return across > TOUCH && down > TOUCH && !isSameAs(other);
        }

        /** The renderer draws the head of a table twice where the table goes on; on paper that is one head. */
        private boolean isSameAs(Run other) {
            return text.equals(other.text)
                    && Math.abs(left - other.left) < TOUCH
                    && Math.abs(baseline - other.baseline) < TOUCH;
        }

        private double top() {
            return baseline - RISE * size;
        }

        private double bottom() {
            return baseline + FALL * size;
        }

        private boolean goesOnWith(TextPosition letter) {
            double gap = letter.getXDirAdj() - right;
            return Math.abs(letter.getYDirAdj() - baseline) < 0.1
                    && Math.abs(letter.getFontSizeInPt() - size) < 0.1
                    && gap > -TOUCH
                    && gap < GAP * size;
        }

        private Run with(TextPosition letter) {
            double end = letter.getXDirAdj() + letter.getWidthDirAdj();
            return new Run(text + letter.getUnicode(), left, end, baseline, size);
        }

        private static Run of(TextPosition letter) {
            double left = letter.getXDirAdj();
            double right = left + letter.getWidthDirAdj();
            return new Run(letter.getUnicode(), left, right, letter.getYDirAdj(), letter.getFontSizeInPt());
        }
    }

    /** The runs of each page, the first page at index 0; what stands askew, as a band laid across on purpose, is left out. */
    public static List<List<Run>> of(PDDocument document) throws IOException {
        List<List<Run>> pages = new ArrayList<>();
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
            TextRuns runs = new TextRuns();
            runs.setStartPage(page);
            runs.setEndPage(page);
            runs.getText(document);
            pages.add(List.copyOf(runs.runs));
        }
        return pages;
    }

    /** Pairs of runs that stand over each other, one line a pair. */
    public static List<String> overlaps(List<Run> page) {
        List<Run> sorted =
                page.stream().sorted(Comparator.comparingDouble(Run::top)).toList();
        List<String> overlaps = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            for (int j = i + 1;
                    j < sorted.size() && sorted.get(j).top() < sorted.get(i).bottom();
                    j++) {
                if (sorted.get(i).isUnder(sorted.get(j))) {
                    overlaps.add(sorted.get(i).text() + " / " + sorted.get(j).text());
                }
            }
        }
        return overlaps;
    }

    /** A no-break space too. */
    private static boolean isSpace(TextPosition letter) {
        return letter.getUnicode().codePoints().allMatch(Character::isSpaceChar);
    }

    @Override
    protected void processTextPosition(TextPosition letter) {
        if (letter.getTextMatrix().getShearY() != 0 || isSpace(letter)) {
            return;
        }
        int last = runs.size() - 1;
        if (last >= 0 && runs.get(last).goesOnWith(letter)) {
            runs.set(last, runs.get(last).with(letter));
        } else {
            runs.add(Run.of(letter));
        }
    }
}

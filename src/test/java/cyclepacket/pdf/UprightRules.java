package cyclepacket.pdf;

import cyclepacket.pdf.TextRuns.Run;
import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Upright rules of a page, as the sides of cells and boxes are drawn: for text that runs over one. */
public final class UprightRules extends PDFGraphicsStreamEngine {
    /** A rule is at most so wide, and at least so high, in points; a mark on a drawn syringe is lower. */
    private static final double WIDEST = 3.5;

    private static final double LOWEST = 12;

    /** Points of a run that must lie on both sides of a rule. */
    private static final double OVER = 2.5;

    private final GeneralPath path = new GeneralPath();
    private final List<Rectangle2D> rules = new ArrayList<>();

    private UprightRules(PDPage page) {
        super(page);
    }

    /** Runs of text that a rule goes through, one line each. */
    public static List<String> crossed(PDPage page, List<Run> runs) throws IOException {
        UprightRules drawn = new UprightRules(page);
        drawn.processPage(page);
        double height = page.getMediaBox().getHeight();
        List<String> crossed = new ArrayList<>();
        for (Run run : runs) {
            for (Rectangle2D rule : drawn.rules) {
                double middle = rule.getCenterX();
                double top = height - rule.getMaxY();
                double bottom = height - rule.getMinY();
                boolean isThrough = middle > run.left() + OVER && middle < run.right() - OVER;
                // The middle of small letters: neither the line above nor the line below counts.
                double letters = run.baseline() - run.size() / 4;
                if (isThrough && letters > top && letters < bottom) {
                    crossed.add(run.text() + " at " + Math.round(middle) + ", " + Math.round(run.baseline()));
                }
            }
        }
        return crossed;
    }

    @Override
    public void appendRectangle(Point2D first, Point2D second, Point2D third, Point2D fourth) {
        moveTo((float) first.getX(), (float) first.getY());
        lineTo((float) second.getX(), (float) second.getY());
        lineTo((float) third.getX(), (float) third.getY());
        lineTo((float) fourth.getX(), (float) fourth.getY());
        closePath();
    }

    @Override
    public void drawImage(PDImage image) {
        // No rule.
    }

    @Override
    public void clip(int windingRule) {
        // What is cut off is drawn elsewhere on the same line, so clips do not matter.
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void endPath() {
        path.reset();
    }

    @Override
    public void strokePath() {
        keep();
    }

    @Override
    public void fillPath(int windingRule) {
        keep();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        keep();
    }

    @Override
    public void shadingFill(COSName shadingName) {
        // No rule.
    }

    private void keep() {
        Rectangle2D box = path.getBounds2D();
        if (box.getWidth() <= WIDEST && box.getHeight() >= LOWEST) {
            rules.add(box);
        }
        path.reset();
    }
}

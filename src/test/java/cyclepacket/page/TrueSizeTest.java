package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import cyclepacket.packet.Press;
import cyclepacket.pdf.Conformity;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Reads the lines of the drawings out of the printed PDF and measures them, in millimetres on paper. */
class TrueSizeTest {
    private static final double MM = 72 / 25.4;
    private static final double NEAR = 0.1;
    private static byte[] packet;

    @BeforeAll
    static void print() throws IOException {
        Path out = Path.of("target/true-size");
        try (Press press = new Press(Path.of("."))) {
            press.print(LaidOut.demo("LM-06233-issue-2").path(), out, false, Instant.parse("2027-04-21T12:00:00Z"));
        }
        packet = Files.readAllBytes(out.resolve("LM-06233/issue-2/packet.pdf"));
    }

    /** One straight stroke, in millimetres. */
    private record Stroke(int page, double x1, double y1, double x2, double y2, double width) {
        boolean isUpright() {
            return Math.abs(x1 - x2) < 0.001;
        }

        double length() {
            return Math.hypot(x2 - x1, y2 - y1);
        }
    }

    /** Every stroke of two points. */
    private static final class Strokes extends PDFGraphicsStreamEngine {
        private final int page;
        private final List<Stroke> strokes;
        private final List<Point2D> points = new ArrayList<>();

        Strokes(PDPage page, int number, List<Stroke> strokes) {
            super(page);
            this.page = number;
            this.strokes = strokes;
        }

        @Override
        public void moveTo(float x, float y) {
            points.clear();
            points.add(new Point2D.Double(x, y));
        }

        @Override
        public void lineTo(float x, float y) {
            points.add(new Point2D.Double(x, y));
        }

        @Override
        public void strokePath() {
            if (points.size() == 2) {
                double thick = transformWidth(getGraphicsState().getLineWidth()) / MM;
                strokes.add(new Stroke(
                        page,
                        points.get(0).getX() / MM,
                        points.get(0).getY() / MM,
                        points.get(1).getX() / MM,
                        points.get(1).getY() / MM,
                        thick));
            }
            points.clear();
        }

        @Override
        public void endPath() {
            points.clear();
        }

        @Override
        public void fillPath(int rule) {
            points.clear();
        }

        @Override
        public void fillAndStrokePath(int rule) {
            points.clear();
        }

        @Override
        public Point2D getCurrentPoint() {
            return points.isEmpty() ? new Point2D.Double() : points.get(points.size() - 1);
        }

        @Override
        public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
            points.clear();
        }

        @Override
        public void curveTo(float a, float b, float c, float d, float x, float y) {
            points.add(new Point2D.Double(x, y));
            points.add(new Point2D.Double(x, y));
        }

        @Override
        public void closePath() {
            points.add(new Point2D.Double());
        }

        @Override
        public void clip(int rule) {
            points.clear();
        }

        @Override
        public void drawImage(PDImage image) {
            points.clear();
        }

        @Override
        public void shadingFill(COSName name) {
            points.clear();
        }
    }

    private static List<Stroke> strokes() throws IOException {
        List<Stroke> strokes = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(packet)) {
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                new Strokes(document.getPage(page), page, strokes).processPage(document.getPage(page));
            }
        }
        return strokes;
    }

    private static List<Stroke> drawLines() throws IOException {
        return strokes().stream()
                .filter(stroke -> stroke.isUpright() && Math.abs(stroke.width() - 0.7) < 0.01)
                .toList();
    }

    /** The scale line of a numbered volume: its page's thin upright strokes, from left to right. */
    private static List<Double> scaleLines(Stroke draw) throws IOException {
        return strokes().stream()
                .filter(stroke -> stroke.page() == draw.page() && stroke.isUpright())
                .filter(stroke -> Math.abs(stroke.width() - 0.25) < 0.01 || Math.abs(stroke.width() - 0.12) < 0.01)
                .filter(stroke ->
                        Math.abs(Math.max(stroke.y1(), stroke.y2()) - (Math.max(draw.y1(), draw.y2()) - 5.5)) < 0.2)
                .map(Stroke::x1)
                .sorted()
                .distinct()
                .toList();
    }

    /** The small syringe has a scale of 43 mm for 50 marks: the 10 mark is 8.6 mm from zero, the 5 mark 4.3 mm. */
    @Test
    void putsTheDrawLineOnItsMark() throws IOException {
        List<Stroke> draws = drawLines();
        assertEquals(3, draws.size());
        double[] expected = {8.6, 4.3, 57};
        double[] scales = {43, 43, 57};
        for (int index = 0; index < draws.size(); index++) {
            List<Double> lines = scaleLines(draws.get(index));
            double zero = lines.get(0);
            double last = lines.get(lines.size() - 1);
            assertEquals(scales[index], last - zero, NEAR, "the scale at true size");
            assertEquals(expected[index], draws.get(index).x1() - zero, NEAR, "the draw line");
            double own = draws.get(index).x1();
            assertTrue(lines.stream().anyMatch(line -> Math.abs(line - own) < 0.01), "on a line of the scale");
        }
    }

    @Test
    void drawsEveryLineOfTheScale() throws IOException {
        assertEquals(51, scaleLines(drawLines().get(0)).size());
        assertEquals(21, scaleLines(drawLines().get(2)).size());
    }

    @Test
    void drawsAFiveCentimetreLine() throws IOException {
        List<Stroke> rulers = strokes().stream()
                .filter(stroke -> !stroke.isUpright() && Math.abs(stroke.width() - 0.5) < 0.01)
                .filter(stroke -> Math.abs(stroke.length() - 50) < 1)
                .toList();
        assertEquals(2, rulers.size(), "one on each vial page");
        for (Stroke ruler : rulers) {
            assertEquals(50, ruler.length(), NEAR);
        }
    }

    @Test
    void keepsThePublishedRulesForPdf() {
        Conformity.assertConforms(packet);
    }

    /** The same line on a picture of the page: at 254 dots to the inch ten dots are a millimetre. */
    @Test
    void printsTheLineAtItsLength() throws IOException {
        Stroke ruler = strokes().stream()
                .filter(stroke -> !stroke.isUpright() && Math.abs(stroke.width() - 0.5) < 0.01)
                .filter(stroke -> Math.abs(stroke.length() - 50) < 1)
                .findFirst()
                .orElseThrow();
        try (PDDocument document = Loader.loadPDF(packet)) {
            BufferedImage picture = new PDFRenderer(document).renderImageWithDPI(ruler.page(), 254);
            double height = document.getPage(ruler.page()).getMediaBox().getHeight() / MM;
            int row = (int) Math.round((height - ruler.y1()) * 10);
            int from = (int) Math.round(Math.min(ruler.x1(), ruler.x2()) * 10);
            int left = from;
            while (isDark(picture, left - 1, row)) {
                left--;
            }
            int right = from;
            while (isDark(picture, right + 1, row)) {
                right++;
            }
            assertEquals(500, right - left, 6);
        }
    }

    private static boolean isDark(BufferedImage picture, int x, int y) {
        return (picture.getRGB(x, y) & 0xff) < 128;
    }
}

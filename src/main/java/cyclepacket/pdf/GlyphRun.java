package cyclepacket.pdf;

import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Words as outlines in one size and weight; lengths are in the drawing's own units. */
final class GlyphRun {
    private final FontShelf fonts;
    private final int weight;
    private final double size;

    GlyphRun(FontShelf fonts, int weight, double size) {
        this.fonts = fonts;
        this.weight = weight;
        this.size = size;
    }

    double widthOf(String words) throws IOException {
        double width = 0;
        for (int codePoint : words.codePoints().toArray()) {
            FontShelf.Face face = fonts.faceFor(codePoint, weight);
            width += face.font().getAdvanceWidth(glyph(face, codePoint)) * scale(face);
        }
        return width;
    }

    /** Path data whose first letter stands at x on the base line y; y grows downwards, as SVG has it. */
    String outlinesOf(String words, double x, double y) throws IOException {
        StringBuilder path = new StringBuilder();
        double pen = x;
        for (int codePoint : words.codePoints().toArray()) {
            FontShelf.Face face = fonts.faceFor(codePoint, weight);
            int glyph = glyph(face, codePoint);
            Optional<GeneralPath> outline = face.outline(glyph);
            if (outline.isPresent()) {
                append(path, outline.get().getPathIterator(null), new Spot(pen, y, scale(face)));
            }
            pen += face.font().getAdvanceWidth(glyph) * scale(face);
        }
        return path.toString();
    }

    private static int glyph(FontShelf.Face face, int codePoint) {
        return face.characters().getGlyphId(codePoint);
    }

    private double scale(FontShelf.Face face) throws IOException {
        return size / face.font().getUnitsPerEm();
    }

    private static void append(StringBuilder path, PathIterator outline, Spot spot) {
        double[] points = new double[6];
        for (; !outline.isDone(); outline.next()) {
            int step = outline.currentSegment(points);
            path.append("MLQCZ".charAt(step));
            int pairs = new int[] {1, 1, 2, 3, 0}[step];
            for (int i = 0; i < pairs; i++) {
                spot.append(path, points[2 * i], points[2 * i + 1]);
            }
        }
    }

    /** Where a letter stands, and how large one font unit is there. */
    private record Spot(double x, double y, double scale) {
        void append(StringBuilder path, double across, double up) {
            path.append(written(x + across * scale))
                    .append(' ')
                    .append(written(y - up * scale))
                    .append(' ');
        }

        private static String written(double length) {
            return BigDecimal.valueOf(length)
                    .setScale(3, RoundingMode.HALF_EVEN)
                    .toPlainString();
        }
    }
}

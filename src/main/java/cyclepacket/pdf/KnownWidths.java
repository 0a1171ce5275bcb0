package cyclepacket.pdf;

import com.openhtmltopdf.extend.FontContext;
import com.openhtmltopdf.extend.TextRenderer;
import com.openhtmltopdf.pdfboxout.PdfBoxFSFont;
import com.openhtmltopdf.pdfboxout.PdfBoxTextRenderer;
import com.openhtmltopdf.render.FSFont;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.font.PDFont;

/**
 * Measures text by the width of each character, asked of the font once; one for each document, used by one thread. The
 * renderer's own way writes each text to bytes, reads them back as glyphs and asks for each glyph's width. The sums are
 * the same to the last bit: no font here moves letters together.
 */
final class KnownWidths extends PdfBoxTextRenderer {
    /** Characters from here on are measured in the renderer's own way. */
    private static final int KNOWN = 0x2100;
    /** The renderer's own: what is this little over a whole number of dots is not rounded up. */
    private static final float DELTA = 0.01f;

    private final Map<PDFont, float[]> widths = new IdentityHashMap<>();
    private final LayoutLimits limits;

    KnownWidths(LayoutLimits limits) {
        this.limits = limits;
    }

    @Override
    public int getWidth(FontContext context, FSFont font, String text) {
        limits.goOn();
        PDFont first = ((PdfBoxFSFont) font).getFontDescriptions().get(0).getFont();
        float units = first == null ? Float.NaN : sum(first, TextRenderer.getEffectivePrintableString(text));
        if (Float.isNaN(units)) {
            return super.getWidth(context, font, text);
        }
        float dots = units / 1000f * font.getSize2D();
        return dots - Math.floor(dots) < DELTA ? (int) dots : (int) Math.ceil(dots);
    }

    /** In thousandths of the font's size; not a number when a character is not known or not in the font. */
    private float sum(PDFont font, String text) {
        float[] known = widths.computeIfAbsent(font, f -> unknown());
        float sum = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= KNOWN) {
                return Float.NaN;
            }
            if (known[c] < 0) {
                known[c] = measured(font, c);
            }
            sum += known[c];
        }
        return sum;
    }

    private static float[] unknown() {
        float[] widths = new float[KNOWN];
        Arrays.fill(widths, -1);
        return widths;
    }

    private static float measured(PDFont font, char c) {
        try {
            return font.getStringWidth(String.valueOf(c));
        } catch (IllegalArgumentException notInFont) {
            return Float.NaN;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

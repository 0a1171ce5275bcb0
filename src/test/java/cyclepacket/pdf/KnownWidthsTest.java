package cyclepacket.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.openhtmltopdf.bidi.SimpleBidiReorderer;
import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.pdfboxout.PdfBoxFSFont;
import com.openhtmltopdf.pdfboxout.PdfBoxFontResolver.FontDescription;
import com.openhtmltopdf.pdfboxout.PdfBoxTextRenderer;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** Lines break where the renderer itself would break them: its own measure is the reference. */
class KnownWidthsTest {
    private static final String LETTERS =
            "abcdefgh ijklm nopqrst uvwxyz ABCXYZ 0123456789.,:-\u00A0\u00E9\u00F1\u0151\u03B1\u0416\u1EC7";
    /** In the fonts for symbols and other letters alone, and a soft hyphen, which is not printed. */
    private static final String ODD = "\u2610\u1F00\u00AD";

    @Test
    void measuresAsTheRendererDoes() throws IOException {
        try (PDDocument document = new PDDocument()) {
            List<FontDescription> fonts = FontShelf.open(Samples.TEMPLATES.resolve("fonts")).lendTo(document).stream()
                    .map(loan -> new FontDescription(loan.supply(), IdentValue.NORMAL, 400))
                    .toList();
            PdfBoxTextRenderer own = new PdfBoxTextRenderer();
            own.setup(null, new SimpleBidiReorderer());
            KnownWidths known = new KnownWidths(new LayoutLimits(LayoutLimits.LONGEST));
            known.setup(null, new SimpleBidiReorderer());
            Random random = new Random(20270305);
            for (int i = 0; i < 5_000; i++) {
                String text = text(random);
                PdfBoxFSFont font = new PdfBoxFSFont(fonts, 60 + random.nextInt(600) / 10f);
                assertEquals(own.getWidth(null, font, text), known.getWidth(null, font, text), text);
            }
        }
    }

    private static String text(Random random) {
        return random.ints(random.nextInt(40), 0, 300)
                .mapToObj(n -> n == 0 ? ODD : String.valueOf(LETTERS.charAt(n % LETTERS.length())))
                .collect(Collectors.joining());
    }
}

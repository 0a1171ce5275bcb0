package cyclepacket.pdf;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxFontResolver;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.awt.geom.GeneralPath;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The shipped fonts, each parsed once, when a character first needs it, and lent to every document at once. */
final class FontShelf {
    private final List<Face> faces;

    private FontShelf(List<Face> faces) {
        this.faces = faces;
    }

    /** Finds the five font files; the order is the order in which they are asked for a character. */
    static FontShelf open(Path folder) throws IOException {
        return new FontShelf(List.of(
                Face.of(folder.resolve("Andika-Regular.ttf"), "Andika", 400),
                Face.of(folder.resolve("Andika-Bold.ttf"), "Andika", 700),
                Face.of(folder.resolve("NotoSans-Regular.ttf"), "Noto Sans", 400),
                Face.of(folder.resolve("NotoSans-Bold.ttf"), "Noto Sans", 700),
                Face.of(folder.resolve("NotoSansSymbols2-Regular.ttf"), "Noto Sans Symbols 2", 400)));
    }

    /** The face that most text is set in. */
    Face first() {
        return faces.get(0);
    }

    /** Reads the two faces that every document is set in. */
    void prepare() {
        faces.subList(0, 2).forEach(Face::characters);
    }

    boolean canDraw(int codePoint) {
        return faces.stream().anyMatch(face -> face.characters().getGlyphId(codePoint) != 0);
    }

    /** The first face of that weight, else of any weight, that has the character. */
    Face faceFor(int codePoint, int weight) {
        Face any = faces.get(0);
        for (Face face : faces) {
            if (face.characters().getGlyphId(codePoint) != 0) {
                if (face.weight() == weight) {
                    return face;
                }
                any = any.characters().getGlyphId(codePoint) != 0 ? any : face;
            }
        }
        return any;
    }

    /** Lends the fonts to one document; the document is filled lazily, with the fonts it really uses. */
    List<Loan> lendTo(PDDocument document) {
        List<Loan> loans = new ArrayList<>();
        for (Face face : faces) {
            loans.add(new Loan(face, document));
        }
        return List.copyOf(loans);
    }

    /** One font file, in memory from its first use on; a packet of English text never opens three of the five. */
    static final class Face {
        /** In bytes of a font file's table directory (OpenType 1.9, "Font file"): the count of tables, the first, each. */
        private static final int TABLE_COUNT = 4;

        private static final int FIRST_TABLE = 12;
        private static final int TABLE_ENTRY = 16;
        private static final int SUBSTITUTION = 0x47535542;

        private final Path file;
        private final String family;
        private final int weight;
        private TrueTypeFont font;
        private CmapLookup characters;

        private Face(Path file, String family, int weight) {
            this.file = file;
            this.family = family;
            this.weight = weight;
        }

        /** @throws NoSuchFileException when there is no such file to read */
        static Face of(Path file, String family, int weight) throws IOException {
            if (!Files.isReadable(file)) {
                throw new NoSuchFileException(file.toString());
            }
            return new Face(file, family, weight);
        }

        String family() {
            return family;
        }

        int weight() {
            return weight;
        }

        synchronized TrueTypeFont font() {
            if (font == null) {
                try {
                    byte[] bytes = withoutSubstitution(Files.readAllBytes(file));
                    font = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
                } catch (IOException e) {
                    throw new UncheckedIOException("font " + family + " cannot be read", e);
                }
            }
            return font;
        }

        /** The library gives out a letter that another thread is still reading, so one thread at a time asks here. */
        synchronized Optional<GeneralPath> outline(int glyph) {
            try {
                return Optional.ofNullable(font().getGlyph().getGlyph(glyph)).map(GlyphData::getPath);
            } catch (IOException e) {
                throw new UncheckedIOException("font " + family + " cannot be read", e);
            }
        }

        /**
         * The same font whose table of substitutions (OpenType, GSUB) is called by a name that no reader asks for.
         * Ligatures made by substitution fail PDF/UA 7.21.7, and reading the table takes a third of a font's time.
         */
        private static byte[] withoutSubstitution(byte[] font) {
            int tables = ByteBuffer.wrap(font).getShort(TABLE_COUNT);
            for (int entry = 0; entry < tables; entry++) {
                int at = FIRST_TABLE + entry * TABLE_ENTRY;
                if (ByteBuffer.wrap(font).getInt(at) == SUBSTITUTION) {
                    font[at] = 'X';
                }
            }
            return font;
        }

        synchronized CmapLookup characters() {
            if (characters == null) {
                try {
                    characters = font().getUnicodeCmapLookup();
                } catch (IOException e) {
                    throw new UncheckedIOException("font " + family + " cannot be read", e);
                }
            }
            return characters;
        }
    }

    /** One face for one document. */
    static final class Loan extends PDFontSupplier {
        private final Face face;
        private final PDDocument document;
        private PDFont made;

        private Loan(Face face, PDDocument document) {
            super(null);
            this.face = face;
            this.document = document;
        }

        @Override
        public PDFont supply() {
            if (made == null) {
                try {
                    made = PDType0Font.load(document, face.font(), true);
                } catch (IOException e) {
                    throw new UncheckedIOException("font " + face.family() + " cannot be embedded", e);
                }
            }
            return made;
        }

        /** The face under its own name, for {@code font-family}. */
        void nameIn(PdfRendererBuilder builder) {
            builder.useFont(this, face.family(), face.weight(), FontStyle.NORMAL, true);
        }

        /** The face as a last resort for any character that the named families lack. */
        void fallBackIn(PdfBoxFontResolver resolver) {
            resolver.addFont(
                    this,
                    face.family(),
                    face.weight(),
                    IdentValue.NORMAL,
                    true,
                    PdfBoxFontResolver.FontGroup.FINAL_FALLBACK);
        }
    }
}

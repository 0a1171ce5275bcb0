package cyclepacket.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Checked;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class TypesetterTest {
    private static Typesetter typesetter;

    @BeforeAll
    static void open() throws IOException {
        typesetter = Typesetter.open(Samples.TEMPLATES);
    }

    @Test
    void keepsTextOfEachPageInReadingOrder() {
        List<String> pages = Typesetter.pageTexts(typeset(Samples.page(Samples.packet(2))));
        assertEquals(3, pages.size());
        assertTrue(pages.get(0).contains("Give 187.5\u00A0units at 8:00 p.m."), pages.get(0));
        assertTrue(pages.get(1).indexOf("Part 1") < pages.get(1).indexOf("Monday, 8 March"), pages.get(1));
        assertTrue(pages.get(2).contains("Page 3 of 3"), pages.get(2));
    }

    /** ISO 32000-1, 14.8.2.2: a mark that is no content is an artifact; two kinds serve all pages. */
    @Test
    void sharesTheLabelsOfWhatIsNoContent() throws IOException {
        try (PDDocument document = Loader.loadPDF(typeset(Samples.page(Samples.packet(3))))) {
            COSBase labels = null;
            for (PDPage page : document.getPages()) {
                COSDictionary own = page.getResources().getCOSObject().getCOSDictionary(COSName.PROPERTIES);
                assertEquals(2, own.size());
                assertSame(labels == null ? own : labels, own);
                labels = own;
                String content = new String(page.getContents().readAllBytes(), StandardCharsets.ISO_8859_1);
                assertTrue(content.contains("/Artifact /Layout BDC"), "borders of cells");
            }
        }
    }

    @Test
    void printsTickBoxAndAccentedGreekInBoldToo() {
        String text = Typesetter.textOf(
                typeset(Samples.page("<p>\u2610 \u0386\u03BD\u03BD\u03B1</p><p><b>\u2611 \u03AE</b></p>")));
        assertTrue(text.contains("\u2610 \u0386\u03BD\u03BD\u03B1"), text);
        assertTrue(text.contains("\u2611 \u03AE"), text);
        assertFalse(text.contains("#"), text);
    }

    @Test
    void printsInShippedFontsWhateverFamilyThePageNames() throws IOException {
        Sheet sheet = Samples.sheet(Samples.xhtml("p { font-family: Nowhere }", "<p>Give 25 <i>units</i> \u2610</p>"));
        try (PDDocument document = Loader.loadPDF(typeset(sheet))) {
            List<String> names = new ArrayList<>();
            for (COSName key : document.getPage(0).getResources().getFontNames()) {
                PDFont font = document.getPage(0).getResources().getFont(key);
                assertTrue(font.isEmbedded(), font.getName());
                names.add(font.getName().replaceFirst("^[A-Z]{6}\\+", ""));
            }
            assertTrue(names.contains("Andika"), names.toString());
            assertTrue(names.contains("NotoSansSymbols2-Regular"), names.toString());
        }
    }

    @Test
    void nestsBookmarksAsTheHeadingsAre() throws IOException {
        try (PDDocument document = Loader.loadPDF(typeset(Samples.page(Samples.packet(2))))) {
            PDOutlineItem top =
                    document.getDocumentCatalog().getDocumentOutline().getFirstChild();
            assertEquals("Start here", top.getTitle());
            List<String> parts = new ArrayList<>();
            for (PDOutlineItem part : top.children()) {
                parts.add(part.getTitle() + "/" + part.getFirstChild().getTitle());
            }
            assertEquals(List.of("Part 1/Evenings", "Part 2/Evenings"), parts);
        }
    }

    @Test
    void writesTheFactsItWasGiven() throws IOException {
        try (PDDocument document = Loader.loadPDF(typeset(Samples.page("<p>Stop.</p>")))) {
            assertEquals(
                    "Packet DEMO issue 1", document.getDocumentInformation().getTitle());
            assertEquals(
                    "Injection packet, invented",
                    document.getDocumentInformation().getSubject());
            assertEquals(
                    "D:20270301000000+00'00'",
                    document.getDocumentInformation().getCOSObject().getString(COSName.MOD_DATE));
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            assertTrue(document.getDocumentCatalog().getViewerPreferences().displayDocTitle());
        }
    }

    @Test
    void carriesAttachmentsUnchanged() throws IOException {
        try (PDDocument document = Loader.loadPDF(typeset(Samples.withAttachments()))) {
            var files =
                    document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
            assertEquals(List.of("clinic.yaml", "plan.yaml"), new ArrayList<>(files.keySet()));
            PDComplexFileSpecification plan = files.get("plan.yaml");
            assertArrayEquals("plan: DEMO\n".getBytes(), plan.getEmbeddedFile().toByteArray());
            assertEquals("Source", plan.getCOSObject().getNameAsString(COSName.AF_RELATIONSHIP));
        }
    }

    @Test
    void setsWordsInDrawingsAsOutlinesOfTheShippedFont() throws IOException {
        String drawing = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"60\" height=\"20\" alt=\"25\">"
                + "<text x=\"5\" y=\"15\" font-size=\"12\">25</text></svg>";
        try (PDDocument document = Loader.loadPDF(typeset(Samples.page("<p>" + drawing + "</p>")))) {
            String outlines = new String(document.getPage(0).getContents().readAllBytes());
            assertTrue(outlines.contains(" l\n") || outlines.contains(" c\n"), outlines);
        }
    }

    @Test
    void refusesDrawingTextThatHasNoSize() {
        assertEquals(
                List.of("DRAWING-TEXT"),
                codes("<svg xmlns=\"http://www.w3.org/2000/svg\" alt=\"25\"><text x=\"5\" y=\"15\">25</text></svg>"));
    }

    @Test
    void refusesPictureWithoutAltText() {
        assertEquals(List.of("ALT-MISSING"), codes("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\"></svg>"));
    }

    @Test
    void refusesStyleThatTheRendererWouldSkip() {
        Checked<byte[]> made = typesetter.typeset(Samples.sheet(Samples.xhtml("p { colour: red }", "<p>Stop.</p>")));
        assertEquals(List.of("STYLE-REJECTED"), codes(made));
    }

    @Test
    void refusesPageThatIsNotXml() {
        Checked<byte[]> made = typesetter.typeset(Samples.page("<p>Give"));
        assertEquals(List.of("XHTML-BROKEN"), codes(made));
        assertTrue(made.value().isEmpty());
    }

    @Test
    void rejectsTwoAttachmentsOfOneName() {
        Attachment one = new Attachment("plan.yaml", "text/plain", "", new byte[0]);
        List<Attachment> twice = List.of(one, one);
        assertThrows(IllegalArgumentException.class, () -> new Sheet("", Samples.facts(), twice));
    }

    private static List<String> codes(String body) {
        return codes(typesetter.typeset(Samples.page(body)));
    }

    private static List<String> codes(Checked<byte[]> made) {
        return made.findings().stream().map(finding -> finding.code()).toList();
    }

    private static byte[] typeset(Sheet sheet) {
        Checked<byte[]> made = typesetter.typeset(sheet);
        return made.value().orElseThrow(() -> new AssertionError(made.findings()));
    }
}

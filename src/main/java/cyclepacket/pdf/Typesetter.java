package cyclepacket.pdf;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import cyclepacket.finding.Checked;
import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.w3c.dom.Document;

/**
 * Turns XHTML into tagged PDF that conforms to PDF/UA-1 and PDF/A-3a. Fonts and colour profile are loaded once; one
 * typesetter serves several threads at once. The same sheet gives the same bytes.
 */
public final class Typesetter {
    /** Where a page is at fault whatever the plan says: in the templates, which are the clinic's. */
    public static final Place TEMPLATES = Place.at("templates", "");

    private final Path templates;
    private final FontShelf fonts;
    private final byte[] colourProfile;
    private final FontMeasures measures = new FontMeasures();

    private final Duration longest;

    private Typesetter(Path templates, Duration longest, FontShelf fonts, byte[] colourProfile) {
        this.templates = templates;
        this.longest = longest;
        this.fonts = fonts;
        this.colourProfile = colourProfile;
    }

    /** @param templates the folder that holds {@code fonts}, {@code colour} and every style sheet and picture */
    public static Typesetter open(Path templates) throws IOException {
        return open(templates, LayoutLimits.LONGEST);
    }

    /** @param longest how long one document may take to lay out */
    static Typesetter open(Path templates, Duration longest) throws IOException {
        Remarks.silenceLog();
        Path folder = templates.toRealPath();
        FontShelf fonts = FontShelf.open(folder.resolve("fonts"));
        FontMappers.set(new OwnFonts(fonts.first()));
        return new Typesetter(
                folder,
                longest,
                fonts,
                Files.readAllBytes(folder.resolve("colour").resolve("sRGB.icc")));
    }

    /** Reads what every document needs before the first one asks for it. */
    public void prepare() {
        fonts.prepare();
    }

    /** The PDF, or nothing and the findings that say why. */
    public Checked<byte[]> typeset(Sheet sheet) {
        Objects.requireNonNull(sheet, "sheet");
        Place place = Place.at(sheet.facts().title(), "");
        Checked<Document> page = XhtmlReader.read(sheet.xhtml(), place);
        if (page.value().isEmpty()) {
            return Checked.refused(page.findings());
        }
        try {
            return new Job(sheet, place).run(page.value().get());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All text of a PDF, in the order in which it is drawn. */
    public static String textOf(byte[] pdf) {
        return String.join("", pageTexts(pdf));
    }

    /** The text of each page, in the order in which it is drawn. */
    public static List<String> pageTexts(byte[] pdf) {
        return PdfText.pages(pdf);
    }

    /** One document under way. */
    private final class Job {
        private final Sheet sheet;
        private final GlyphRule glyphs;
        private final StyleText styles;
        private final TemplateGate gate;
        private final Remarks remarks;
        private final Place place;
        private final LayoutLimits limits = new LayoutLimits(longest);
        private final List<Finding> findings = new ArrayList<>();

        Job(Sheet sheet, Place place) {
            this.sheet = sheet;
            this.place = place;
            this.glyphs = new GlyphRule(fonts, place);
            this.styles = new StyleText(glyphs);
            this.gate = new TemplateGate(templates, place, styles);
            this.remarks = new Remarks(place);
        }

        Checked<byte[]> run(Document page) throws IOException {
            LayoutLimits.ofTree(page).ifPresent(findings::add);
            if (hasStop()) {
                return refused();
            }
            findings.addAll(new PageRules(glyphs, styles, gate, place).check(page));
            findings.addAll(new DrawingText(fonts, place).outline(page));
            PageHead.prepare(page, sheet.facts());
            // With a refusal already known the page is not laid out at all, so nothing of it can reach a library.
            return hasStop() ? refused() : render(page);
        }

        private Checked<byte[]> render(Document page) throws IOException {
            ReadingOrder order = ReadingOrder.prepare(page);
            try (PDDocument document = new PDDocument();
                    PdfBoxRenderer renderer = renderer(document, page)) {
                limits.layOut(renderer).ifPresent(findings::add);
                if (!hasStop()) {
                    renderer.createPDFWithoutClosing();
                }
                if (hasStop()) {
                    return refused();
                }
                order.apply(document);
                new Finish(document, sheet).apply(colourProfile);
                ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                document.save(bytes);
                return Checked.of(bytes.toByteArray(), allFindings());
            }
        }

        private PdfBoxRenderer renderer(PDDocument document, Document page) {
            UsedStyles used = UsedStyles.of(page);
            used.shorten(page);
            List<FontShelf.Loan> loans = fonts.lendTo(document);
            PdfRendererBuilder builder = new PdfRendererBuilder()
                    .usePDDocument(document)
                    .useNamespaceHandler(new Elements(used))
                    .usePageSupplier(new SharedLabels())
                    .withW3cDocument(page, TemplateGate.BASE)
                    .usePdfUaAccessibility(true)
                    .usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_3_A)
                    .useCacheStore(PdfRendererBuilder.CacheStore.PDF_FONT_METRICS, measures)
                    .useSVGDrawer(new BatikSVGDrawer())
                    .useUriResolver(gate)
                    .useProtocolsStreamImplementation(gate.files(), TemplateGate.SCHEME)
                    .useProtocolsStreamImplementation(
                            gate.refusals(), "http", "https", "file", "ftp", "jar", "jrt", "data", "classpath")
                    .withDiagnosticConsumer(remarks);
            loans.forEach(loan -> loan.nameIn(builder));
            PdfBoxRenderer renderer = builder.buildPdfRenderer();
            renderer.getSharedContext().setTextRenderer(new KnownWidths(limits));
            loans.forEach(loan -> loan.fallBackIn(renderer.getFontResolver()));
            return renderer;
        }

        private boolean hasStop() {
            return allFindings().stream().anyMatch(Finding::isStop);
        }

        private Checked<byte[]> refused() {
            return Checked.refused(allFindings());
        }

        private List<Finding> allFindings() {
            List<Finding> all = new ArrayList<>(findings);
            all.addAll(gate.findings());
            all.addAll(remarks.findings());
            return Finding.sorted(all);
        }
    }
}

package cyclepacket.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Checked;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class ConformityTest {
    private static Typesetter typesetter;

    @BeforeAll
    static void open() throws IOException {
        typesetter = Typesetter.open(Samples.TEMPLATES);
    }

    @Test
    void acceptsPacketWithTablesDrawingsAndAttachments() {
        Checked<byte[]> made = typesetter.typeset(Samples.withAttachments());
        assertTrue(made.value().isPresent(), () -> made.findings().toString());
        Conformity.assertConforms(made.value().get());
    }

    @Test
    void acceptsSpanishPageWithoutHeadingsAttachmentsOrStyle() {
        DocumentFacts facts = new DocumentFacts(
                "Hoja de la puerta <1> & \u00F1", "Para la puerta", "es", LocalDate.of(2027, 3, 1), "0F");
        String page = "<html xmlns=\"http://www.w3.org/1999/xhtml\"><body><p>\u00BFDudas? Llame.</p></body></html>";
        Checked<byte[]> made = typesetter.typeset(new Sheet(page, facts, List.of()));
        assertTrue(made.value().isPresent(), () -> made.findings().toString());
        Conformity.assertConforms(made.value().get());
    }

    @Test
    void acceptsLinksInsideThePacketAndToATelephone() throws IOException {
        byte[] pdf = typesetter
                .typeset(Samples.page("<h1 id=\"a\">A</h1><p><a href=\"#a\" title=\"Go to part A\">See A</a>."
                        + " <a href=\"tel:5550100\">Call us</a>.</p>"))
                .value()
                .orElseThrow();
        Conformity.assertConforms(pdf);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(
                    List.of("Go to part A", "Call us"),
                    document.getPage(0).getAnnotations().stream()
                            .map(PDAnnotation::getContents)
                            .toList());
        }
    }

    @Test
    void rejectsBlankUntaggedFile() throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            List<String> broken = Conformity.brokenRules(saved(document));
            assertTrue(broken.stream().anyMatch(rule -> rule.startsWith("PDFUA_1")), broken.toString());
            assertTrue(broken.stream().anyMatch(rule -> rule.startsWith("PDFA_3_A")), broken.toString());
        }
    }

    @Test
    void rejectsFileWithoutItsStructureTree() throws IOException {
        byte[] whole = typesetter.typeset(Samples.withAttachments()).value().orElseThrow();
        try (PDDocument document = Loader.loadPDF(whole)) {
            document.getDocumentCatalog().getCOSObject().removeItem(COSName.STRUCT_TREE_ROOT);
            List<String> broken = Conformity.brokenRules(saved(document));
            assertTrue(broken.stream().anyMatch(rule -> rule.startsWith("PDFUA_1 7.1-11 ")), broken.toString());
        }
    }

    @Test
    void rejectsTableWithMissingCell() {
        String table = "<h1>Evenings</h1><table><thead><tr><th scope=\"col\">Day</th><th scope=\"col\">Give</th></tr>"
                + "</thead><tbody><tr><td>Monday</td></tr></tbody></table>";
        byte[] pdf = typesetter.typeset(Samples.page(table)).value().orElseThrow();
        List<String> broken = Conformity.brokenRules(pdf);
        assertFalse(broken.isEmpty());
        assertTrue(broken.stream().allMatch(rule -> rule.startsWith("PDFUA_1 7.2-43 ")), broken.toString());
    }

    private static byte[] saved(PDDocument document) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        document.save(bytes);
        return bytes.toByteArray();
    }
}

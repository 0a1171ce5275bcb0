package cyclepacket.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.pdf.DocumentFacts;
import cyclepacket.pdf.Sheet;
import cyclepacket.pdf.Typesetter;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The comparer sees each kind of difference planted in a small document, and none where there is none. */
class PdfComparisonTest {
    private static final String BODY =
            "<h1>Every evening</h1><p>Fri 5 March: <b>187.5 units</b>.</p><p>Use only pages with code AAAA-BBBB-CCC.</p>"
                    + "<h2 style='page-break-before: always'>When to call</h2><p class='box'>Call at once.</p>";

    private static Typesetter typesetter;

    @BeforeAll
    static void open() throws IOException {
        typesetter = Typesetter.open(Path.of("templates"));
    }

    @Test
    void seesNothingInTheSame() {
        assertEquals(List.of(), compared(BODY));
    }

    @Test
    void passesOverTheCodeOfTheIssue() {
        assertEquals(List.of(), compared(BODY.replace("AAAA-BBBB-CCC", "7Q2K-M8ZD-W0W")));
    }

    @Test
    void tellsAChangedAmountWithItsPage() {
        List<String> told = compared(BODY.replace("187.5", "178.5"));
        assertEquals(
                List.of("MEANING page 1, line 2: \"Fri 5 March: 187.5 units.\" became \"Fri 5 March: 178.5 units.\""),
                told);
    }

    @Test
    void tellsALostPage() {
        List<String> told = compared(BODY.replaceFirst("<h2.*", ""));
        assertTrue(told.contains("MEANING 2 pages became 1"), told.toString());
    }

    @Test
    void tellsALostHeadingThoughTheWordsStand() {
        List<String> told = compared(BODY.replace("<h1>", "<p>").replace("</h1>", "</p>"));
        assertTrue(told.stream().anyMatch(line -> line.startsWith("MEANING structure")), told.toString());
    }

    @Test
    void tellsALostLanguage() {
        List<String> told = compared(BODY.replace("<p class='box'>", "<p class='box' lang='es'>"));
        assertEquals(
                List.of("MEANING structure, line"),
                told.stream().map(line -> line.substring(0, 23)).toList());
    }

    @Test
    void tellsAFrameThatIsGoneOnlyWhenTheWordsStand() {
        List<String> told = compared(BODY.replace("class='box'", "class='plain'"));
        assertEquals(List.of("LOOKS page 2 says the same and looks different"), told);
        List<String> both =
                compared(BODY.replace("class='box'", "class='plain'").replace("at once", "later"));
        assertFalse(both.stream().anyMatch(line -> line.startsWith("LOOKS")), both.toString());
    }

    private static List<String> compared(String body) {
        return PdfComparison.of(made(BODY), made(body));
    }

    private static byte[] made(String body) {
        String page = "<html xmlns='http://www.w3.org/1999/xhtml'><head><style>body { font-family: Andika }"
                + " .box { border: 2pt solid #000 } .plain { border: 2pt solid #fff }</style></head><body>" + body
                + "</body></html>";
        DocumentFacts facts = new DocumentFacts("A sample", "invented", "en", LocalDate.of(2027, 3, 1), "SAMPLE");
        return typesetter.typeset(new Sheet(page, facts, List.of())).value().orElseThrow();
    }
}

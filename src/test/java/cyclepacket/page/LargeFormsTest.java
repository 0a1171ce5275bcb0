package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import cyclepacket.finding.Checked;
import cyclepacket.pdf.Conformity;
import cyclepacket.pdf.DocumentFacts;
import cyclepacket.pdf.PageFoot;
import cyclepacket.pdf.Sheet;
import cyclepacket.pdf.TextRuns;
import cyclepacket.pdf.Typesetter;
import cyclepacket.pdf.UprightRules;
import cyclepacket.plan.Plan;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Large print of every form and protocol, and the checks of pages themselves. */
class LargeFormsTest {
    private static final PageWriter WRITER = new PageWriter(DemoPlan.TEMPLATES);

    static List<String> names() {
        return FormPackets.NAMES;
    }

    @ParameterizedTest
    @MethodSource("names")
    void printsPagesThatAreFullAndClear(String name) throws IOException {
        TidyPages.check(name, large(name), Plan.TextSize.LARGE);
    }

    /** Where two boxes of one medicine lie under each other, both hours at each would read as four doses. */
    @Test
    void givesEachStackedBoxItsOwnHour() throws IOException {
        String door =
                String.join(" ", TidyPages.texts(large("FT-08440-issue-2"))).replace('\u00a0', ' ');
        assertTrue(door.contains("tablet 8:00 a.m. (08:00) 1 and a half tablets"), door);
        assertTrue(door.contains("tablet 8:00 p.m. (20:00) 1 and a half tablets"), door);
        assertFalse(door.contains("(08:00), then"), door);
    }

    /** A stacked door, two exact times on a sheet of their own, and drawings of vials. */
    @ParameterizedTest
    @ValueSource(strings = {"FT-08440-issue-2", "EF-07318-issue-2", "DA-05120"})
    void keepsThePublishedRulesForPdf(String name) throws IOException {
        Conformity.assertConforms(large(name));
    }

    private static byte[] large(String name) throws IOException {
        LaidOut laid = FormPackets.laidOut(name);
        String file = "patients/" + laid.path().getFileName();
        PacketFacts facts = FormPackets.facts(laid.with(file, "text-size: standard", "text-size: large"));
        return print(WRITER.packet(new PacketViews(facts, Wording.load(DemoPlan.TEMPLATES, "en")).view()));
    }

    private static byte[] print(String xhtml) throws IOException {
        DocumentFacts facts = new DocumentFacts("A packet", "A packet for a test", "en", DemoPlan.march(3), "test");
        Checked<byte[]> pdf = Typesetter.open(DemoPlan.TEMPLATES).typeset(new Sheet(xhtml, facts, List.of()));
        assertEquals(List.of(), pdf.findings());
        return pdf.value().orElseThrow();
    }

    private static PDDocument planted(String body) throws IOException {
        String style = "@page {size: 8.5in 11in} body {font-family: Andika; font-size: 12pt; line-height: 1.4}";
        return Loader.loadPDF(print("<html xmlns='http://www.w3.org/1999/xhtml' lang='en'><head><title>A</title><style>"
                + style + "</style></head><body>" + body + "</body></html>"));
    }

    @Test
    void seesOneLineOverAnother() throws IOException {
        String lines = "<p style='margin: 0'>Read the window</p><p style='margin: %spt 0 0 0'>then write it</p>";
        try (PDDocument clear = planted(lines.formatted("0"));
                PDDocument over = planted(lines.formatted("-10"))) {
            assertEquals(List.of(), TextRuns.overlaps(TextRuns.of(clear).get(0)));
            List<String> overlaps = TextRuns.overlaps(TextRuns.of(over).get(0));
            assertTrue(overlaps.contains("Read / then"), overlaps.toString());
        }
    }

    @Test
    void seesTextThatRunsOverARule() throws IOException {
        String row = "<table style='table-layout: fixed; width: 200pt'><tr>"
                + "<td style='width: %spt; white-space: nowrap; border-right: 1pt solid #000'>Wednesday 16 June</td>"
                + "<td>Take it</td></tr></table>";
        try (PDDocument clear = planted(row.formatted("120"));
                PDDocument over = planted(row.formatted("60"))) {
            assertEquals(
                    List.of(),
                    UprightRules.crossed(clear.getPage(0), TextRuns.of(clear).get(0)));
            List<String> crossed =
                    UprightRules.crossed(over.getPage(0), TextRuns.of(over).get(0));
            assertTrue(crossed.size() == 1 && crossed.get(0).startsWith("Wednesday"), crossed.toString());
        }
    }

    @Test
    void seesAHeadThatStandsAlone() throws IOException {
        String rest = "<p style='page-break-before: always'>The rest.</p>";
        try (PDDocument heading = planted("<p>Text.</p><h2>Prepare</h2>" + rest);
                PDDocument table = planted(
                        "<table><thead><tr><th scope='col'>Day</th></tr></thead>"
                                + "<tbody><tr><td><div style='page-break-before: always'>5 March</div></td></tr></tbody></table>");
                PDDocument tidy = planted("<h2>Prepare</h2><p>Wash your hands.</p>" + rest)) {
            assertEquals(List.of("page 1: Prepare"), PageFoot.lonelyHeads(heading));
            assertEquals(List.of("page 1: Day"), PageFoot.lonelyHeads(table));
            assertEquals(List.of(), PageFoot.lonelyHeads(tidy));
        }
    }

    @Test
    void seesAHeadWithOneItemOfItsList() throws IOException {
        String list = "<p>Text.</p><h2>Prepare</h2><ul><li>Wash your hands.</li><li%s>Dry them.</li></ul>";
        try (PDDocument torn = planted(list.formatted(" style='page-break-before: always'"));
                PDDocument tidy = planted(list.formatted(""))) {
            assertEquals(List.of("page 1: Prepare"), PageFoot.lonelyItems(torn));
            assertEquals(List.of(), PageFoot.lonelyItems(tidy));
        }
    }
}

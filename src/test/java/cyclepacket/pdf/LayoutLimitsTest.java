package cyclepacket.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Checked;
import cyclepacket.finding.Finding;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A page that asks too much of the renderer is stopped with its place, and one just inside the limit is printed. */
class LayoutLimitsTest {
    private static Typesetter typesetter;

    @BeforeAll
    static void opens() throws IOException {
        typesetter = Typesetter.open(Samples.TEMPLATES);
    }

    private static Checked<byte[]> set(String style, String body) {
        return typesetter.typeset(Samples.sheet(Samples.xhtml(style, body)));
    }

    private static String refused(Checked<byte[]> set) {
        assertTrue(set.value().isEmpty());
        assertEquals(1, set.findings().size(), set.findings().toString());
        Finding finding = set.findings().get(0);
        assertTrue(finding.isStop());
        assertEquals("templates", finding.place().file());
        return finding.code() + " " + finding.text();
    }

    /** One inch is kept for margins at the most, so a block of 5,600 inches fills more than 500 sheets of 11 inches. */
    @Test
    void countsSheetsBeforeAnyIsDrawn() {
        String told = refused(
                set("#door { height: 1000000in }", "<p>Before.</p><div id=\"door\"><p>Tall.</p></div><p>After.</p>"));
        assertTrue(
                told.matches(
                        "LAYOUT-TOO-LONG the page fills 1\\d{5} sheets, and at most 500 are printed, in the part door"),
                told);
    }

    @Test
    void printsAsManySheetsAsItMay() {
        String sheet = "<p style=\"page-break-after: always\">One.</p>";
        Checked<byte[]> most = set("", sheet.repeat(LayoutLimits.MOST_SHEETS - 1) + "<p>Last.</p>");
        assertEquals(
                LayoutLimits.MOST_SHEETS,
                Typesetter.pageTexts(most.value().orElseThrow()).size());
        assertEquals(
                "LAYOUT-TOO-LONG the page fills 501 sheets, and at most 500 are printed",
                refused(set("", sheet.repeat(LayoutLimits.MOST_SHEETS) + "<p>Last.</p>")));
    }

    @Test
    void takesElementsUpToTheLimit() {
        // The page itself has html, head, style and body.
        int own = 4;
        String most = "<i/>".repeat(LayoutLimits.MOST_ELEMENTS - own);
        assertEquals(List.of(), set("i { display: none }", most).findings());
        assertEquals("LAYOUT-TOO-LONG the page has more than 100000 elements", refused(set("", most + "<i/>")));
    }

    /** Body, then 98 blocks and their text: level 100. */
    @Test
    void takesLevelsUpToTheLimit() {
        int most = LayoutLimits.MOST_LEVELS - 2;
        assertEquals(
                List.of(),
                set("", "<div>".repeat(most) + "x" + "</div>".repeat(most)).findings());
        assertEquals(
                "LAYOUT-TOO-LONG the page nests elements more than 100 levels deep, in the part deep",
                refused(set("", "<div id=\"deep\">" + "<div>".repeat(most) + "x" + "</div>".repeat(most) + "</div>")));
        assertTrue(refused(set("", "<b>".repeat(50_000) + "x" + "</b>".repeat(50_000)))
                .startsWith("LAYOUT-TOO-LONG the page nests"));
    }

    @Test
    void stopsWhatTakesTooLong() throws IOException {
        Typesetter hasty = Typesetter.open(Samples.TEMPLATES, Duration.ZERO);
        assertEquals(
                "LAYOUT-TOO-LONG laying the page out takes longer than 0 s",
                refused(hasty.typeset(Samples.page("<p>one two three four five six</p>".repeat(200)))));
    }

    @Test
    void saysWhenMarginsLeaveNoRoom() {
        assertTrue(refused(set("@page { margin: 6in }", "<p>x</p>")).startsWith("LAYOUT-TROUBLE the renderer says: "));
    }
}

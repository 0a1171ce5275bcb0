package cyclepacket.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The ruler itself, on pages whose sizes the test sets by definition. */
class TypeSizesTest {
    private static final double FOOTER = 56;
    private static final String STYLE = "@page { size: 600pt 800pt; margin: 100pt 50pt 60pt 50pt;"
            + " @bottom-left { content: 'Plan DEMO'; font-family: Andika; font-size: 9pt } }"
            + " body { margin: 0; font-family: Andika; font-size: 13pt; line-height: 20pt } p { margin: 0 }";
    private static Typesetter typesetter;

    @BeforeAll
    static void open() throws IOException {
        typesetter = Typesetter.open(Samples.TEMPLATES);
    }

    @Test
    void findsTheSmallestLetterThoughItIsInTheFooter() {
        assertEquals(
                9,
                measure("<p>Give <b style=\"font-size: 20pt\">25</b> units.</p>")
                        .smallestPoints(),
                0.01);
        assertEquals(
                7.5, measure("<p>Give <i style=\"font-size: 7.5pt\">25</i></p>").smallestPoints(), 0.01);
    }

    @Test
    void measuresFromTheTopEdgeToTheLowestMarkAboveTheFooter() {
        TypeSizes.Page page = measure("<div style=\"height: 298pt; border-bottom: 2pt solid #000\"></div>")
                .pages()
                .get(0);
        assertEquals(400, page.lowestMarkPoints(), 1.5);
        assertEquals(0.5, page.fullness(), 0.002);
    }

    @Test
    void countsLettersOutlinesAndLinesAsMarks() {
        assertTrue(measure("<p>Stop.</p>").pages().get(0).lowestMarkPoints() > 100);
        String drawing =
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100pt\" height=\"100pt\" viewBox=\"0 0 100 100\""
                        + " alt=\"a bar\"><rect x=\"0\" y=\"90\" width=\"50\" height=\"10\"/></svg>";
        assertEquals(200, measure("<div>" + drawing + "</div>").pages().get(0).lowestMarkPoints(), 6);
    }

    @Test
    void seesTextThatRunsOffThePaper() {
        TypeSizes.Page inside = measure("<p>Give 25 units.</p>").pages().get(0);
        assertTrue(inside.rightmostPoints() < inside.widthPoints() / 2);
        TypeSizes.Page off = measure("<p style=\"white-space: nowrap\">" + "Give 25 units. ".repeat(9) + "</p>")
                .pages()
                .get(0);
        assertTrue(off.rightmostPoints() > off.widthPoints(), off.toString());
    }

    @Test
    void takesAnEmptyPageForEmpty() {
        assertEquals(0, measure("<p></p>").pages().get(0).lowestMarkPoints());
    }

    @Test
    void countsTheLettersOfTheLongestLineAndNotOfATableRow() {
        TypeSizes sizes = measure("<p>Wash your hands first.</p><table style=\"width: 100%\"><tr><td>Monday</td>"
                + "<td>Tuesday</td><td>Wednesday</td></tr></table>");
        assertEquals("Wash your hands first.", sizes.pages().get(0).longestLineText());
        assertEquals(22, sizes.longestLine());
    }

    private static TypeSizes measure(String body) {
        String page = "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><style>" + STYLE + "</style></head><body>"
                + body + "</body></html>";
        return TypeSizes.of(typesetter.typeset(Samples.sheet(page)).value().orElseThrow(), FOOTER);
    }
}

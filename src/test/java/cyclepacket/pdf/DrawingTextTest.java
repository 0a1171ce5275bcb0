package cyclepacket.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class DrawingTextTest {
    private static final Place PLACE = Place.at("packet", "");
    private static final Pattern POINT = Pattern.compile("(-?\\d+\\.\\d{3}) (-?\\d+\\.\\d{3}) ");
    private static FontShelf fonts;

    @BeforeAll
    static void open() throws IOException {
        fonts = FontShelf.open(Samples.TEMPLATES.resolve("fonts"));
    }

    @Test
    void standsTheLettersOnTheBaseLineFromXOn() {
        List<double[]> points = points(path("<text x='10' y='30' font-size='20'>H</text>"));
        double left = points.stream().mapToDouble(point -> point[0]).min().orElseThrow();
        double top = points.stream().mapToDouble(point -> point[1]).min().orElseThrow();
        double bottom = points.stream().mapToDouble(point -> point[1]).max().orElseThrow();
        assertTrue(left > 10 && left < 13, "left " + left);
        assertEquals(30, bottom, 0.01);
        assertTrue(top > 30 - 20 && top < 30 - 12, "top " + top);
    }

    @Test
    void centresAndEndsTheWordsAtX() throws IOException {
        double width = new GlyphRun(fonts, 400, 20).widthOf("187.5");
        double start =
                points(path("<text x='100' y='30' font-size='20'>187.5</text>")).get(0)[0];
        double middle = points(path("<text x='100' y='30' font-size='20' text-anchor='middle'>187.5</text>"))
                .get(0)[0];
        double end = points(path("<text x='100' y='30' font-size='20' text-anchor='end'>187.5</text>"))
                .get(0)[0];
        assertEquals(width / 2, start - middle, 0.002);
        assertEquals(width, start - end, 0.002);
    }

    @Test
    void takesWeightAndSizeFromTheGroupAround() throws IOException {
        String inGroup = path("<g font-size='20' font-weight='bold'><text x='0' y='0'>25</text></g>")
                .getAttribute("d");
        assertEquals(new GlyphRun(fonts, 700, 20).outlinesOf("25", 0, 0), inGroup);
    }

    @Test
    void keepsFillAndTransform() {
        Element path = path("<text x='0' y='0' font-size='20' fill='#333' transform='rotate(90)'>25</text>");
        assertEquals("#333", path.getAttribute("fill"));
        assertEquals("rotate(90)", path.getAttribute("transform"));
        assertEquals("", path.getAttribute("x"));
    }

    @Test
    void drawsASignThatOnlyTheFallbackFontHas() {
        assertTrue(
                points(path("<text x='0' y='0' font-size='20'>\u2610</text>")).size() > 6);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<text x='0' y='0' font-size='20'>a<tspan>b</tspan></text>",
                "<text x='0' y='0'>a</text>",
                "<text x='0' y='0' font-size='2em'>a</text>",
                "<text x='1 2' y='0' font-size='20'>ab</text>",
                "<text x='50%' y='0' font-size='20'>a</text>"
            })
    void refusesWordsThatItWouldMisplace(String inside) {
        assertEquals(
                List.of("DRAWING-TEXT"),
                new DrawingText(fonts, PLACE)
                        .outline(read(inside)).stream().map(Finding::code).toList());
    }

    private static Element path(String inside) {
        Document page = read(inside);
        assertEquals(List.of(), new DrawingText(fonts, PLACE).outline(page));
        List<Element> elements = Tree.elements(page.getDocumentElement());
        assertTrue(elements.stream().noneMatch(element -> Tree.name(element).equals("text")));
        return elements.get(elements.size() - 1);
    }

    private static Document read(String inside) {
        return XhtmlReader.read("<svg xmlns='http://www.w3.org/2000/svg'>" + inside + "</svg>", PLACE)
                .value()
                .orElseThrow();
    }

    private static List<double[]> points(Element path) {
        return POINT.matcher(path.getAttribute("d"))
                .results()
                .map(match -> new double[] {Double.parseDouble(match.group(1)), Double.parseDouble(match.group(2))})
                .toList();
    }
}

package cyclepacket.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A passage in another language is read aloud in that language (PDF/UA-1, 7.2; ISO 32000-1, 14.9.2). */
class LanguageTagsTest {
    private static Typesetter typesetter;

    @BeforeAll
    static void open() throws IOException {
        typesetter = Typesetter.open(Samples.TEMPLATES);
    }

    static Stream<Arguments> passages() {
        String spanish = "<span lang=\"es\">Hoy no se inyecta.</span>";
        return Stream.of(
                Arguments.of("a whole paragraph", "<p>" + spanish + "</p>"),
                Arguments.of("the end of a paragraph", "<p>Wait. " + spanish + "</p>"),
                Arguments.of("a step", "<ol><li>" + spanish + "</li><li>Wait.</li></ol>"),
                Arguments.of("a heading", "<h1>" + spanish + "</h1>"),
                Arguments.of(
                        "a cell that says so itself",
                        "<table><tr><td lang=\"es\">Hoy no se inyecta.</td>" + "<td>Wait.</td></tr></table>"),
                Arguments.of("a cell", "<table><tr><td>" + spanish + "</td><td>Wait.</td></tr></table>"),
                Arguments.of(
                        "strong words inside", "<p><span lang=\"es\">Hoy <strong>no</strong> se inyecta.</span></p>"),
                Arguments.of("a passage inside strong words", "<p><strong>" + spanish + "</strong></p>"),
                Arguments.of("a link", "<p id=\"a\"><a href=\"#a\" lang=\"es\">Hoy no se inyecta.</a></p>"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("passages")
    void tagsThePassage(String name, String body) throws IOException {
        byte[] pdf = typesetter.typeset(Samples.page(body)).value().orElseThrow();
        assertEquals("Hoy no se inyecta.", spanish(pdf), TaggedText.of(pdf).toString());
        Conformity.assertConforms(pdf);
    }

    @Test
    void tagsEveryLineOfALongPassage() throws IOException {
        String words = "Hoy no se inyecta. ".repeat(20).strip();
        byte[] pdf = typesetter
                .typeset(Samples.page("<p>Wait. <span lang=\"es\">" + words + "</span> Go on.</p>"))
                .value()
                .orElseThrow();
        assertEquals(words, spanish(pdf));
    }

    /** What a picture shows is read aloud too. */
    @Test
    void tagsWhatAPictureShows() throws IOException {
        String drawing =
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"20\" height=\"20\" role=\"img\" alt=\"%s\"%s>"
                        + "<path d=\"M0 0 H20\" stroke=\"#000\"/></svg>";
        byte[] pdf = typesetter
                .typeset(Samples.page("<h1>Wait</h1><div>" + drawing.formatted("Dibujo de una aguja.", " lang=\"es\"")
                        + "</div><div>" + drawing.formatted("Drawing of a pen.", "") + "</div>"))
                .value()
                .orElseThrow();
        assertEquals(
                List.of("es: Dibujo de una aguja.", "en: Drawing of a pen."),
                TaggedOrder.of(pdf).stream()
                        .filter(TaggedOrder.Said::isPicture)
                        .map(picture -> picture.language() + ": " + picture.text())
                        .toList());
        Conformity.assertConforms(pdf);
    }

    /** Whatever floats, also inside what floats, is read where it stands in the text; the renderer hangs it at the end. */
    @Test
    void readsWhatFloatsInItsPlace() throws IOException {
        String beside = "style=\"float: left; width: 60pt\"";
        byte[] pdf = typesetter
                .typeset(Samples.page("<h1>A</h1><p>b</p><div><h2 " + beside + ">C</h2><p>d</p></div><div><div "
                        + beside + "><h2>E</h2><p " + beside + ">f</p></div><p>g</p></div><p lang=\"es\">h</p>"))
                .value()
                .orElseThrow();
        List<TaggedOrder.Said> said = TaggedOrder.of(pdf);
        assertEquals(
                List.of("A", "b", "C", "d", "E", "f", "g", "h"),
                said.stream().map(each -> each.text().strip()).toList());
        assertEquals("es", said.get(7).language());
        assertEquals(
                List.of("en"),
                said.subList(0, 7).stream()
                        .map(TaggedOrder.Said::language)
                        .distinct()
                        .toList());
        Conformity.assertConforms(pdf);
    }

    @Test
    void leavesAPageOfOneLanguageAsItIs() throws IOException {
        byte[] pdf = typesetter.typeset(Samples.withAttachments()).value().orElseThrow();
        assertEquals(
                List.of("en"),
                TaggedText.of(pdf).stream()
                        .map(TaggedBlock::language)
                        .distinct()
                        .toList());
    }

    private static String spanish(byte[] pdf) throws IOException {
        return String.join(
                " ",
                TaggedText.of(pdf).stream()
                        .filter(block -> block.language().equals("es"))
                        .map(TaggedBlock::text)
                        .toList());
    }
}

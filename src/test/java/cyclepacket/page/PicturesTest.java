package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The pictures as files: what each says, and what none may show. */
class PicturesTest {
    private static final Path LIB = DemoPlan.TEMPLATES.resolve("lib");
    private static final Pattern SHAPE = Pattern.compile("\"([a-z-]+)\": [a-zA-Z]+");
    private static final Pattern INSTRUCTION = Pattern.compile("[.?] \\p{Lu}[^.?]*[.?]$|[.?] \\d[^.?]*[.?]$");

    private static List<String> files() throws IOException {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> all = Files.list(LIB)) {
            for (Path file : all.filter(
                            path -> path.getFileName().toString().matches("(pictures.*|hands|tools)\\.ftlh"))
                    .sorted()
                    .toList()) {
                texts.add(Files.readString(file));
            }
        }
        assertEquals(7, texts.size());
        return texts;
    }

    /** The names of all drawings, as the files list them. */
    static TreeSet<String> shapes() throws IOException {
        TreeSet<String> names = new TreeSet<>();
        for (String file : files()) {
            int list = file.indexOf("<#assign shapes = {");
            if (list >= 0) {
                SHAPE.matcher(file.substring(list))
                        .results()
                        .map(match -> match.group(1))
                        .forEach(names::add);
            }
        }
        return names;
    }

    @Test
    void showsEveryStepThatAPersonDoes() throws IOException {
        assertTrue(
                shapes().containsAll(List.of(
                        "wash",
                        "wipe-skin",
                        "wipe-stopper",
                        "needle",
                        "caps",
                        "prime",
                        "window",
                        "pinch-pen",
                        "hold",
                        "zero",
                        "needle-off",
                        "cartridge-out",
                        "cartridge-in",
                        "mix",
                        "draw",
                        "sites-front",
                        "sites-back",
                        "fridge",
                        "call",
                        "emergency",
                        "sign-chest",
                        "sign-swell",
                        "sign-head",
                        "sign-belly",
                        "read-name",
                        "told")),
                shapes().toString());
    }

    /** A caption below, and words for a person who cannot see it: a picture that only says what it shows helps nobody. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void saysWhatToDoBelowAndInWords(String language) throws IOException {
        Wording wording = Wording.load(DemoPlan.TEMPLATES, language);
        for (String shape : shapes()) {
            String caption = wording.text("picture." + shape);
            String alt = wording.text("picture." + shape + ".alt");
            assertTrue(caption.matches(".*[.?]"), shape + ": " + caption);
            assertTrue(alt.startsWith(language.equals("en") ? "Drawing of " : "Dibujo de "), shape + ": " + alt);
            assertTrue(INSTRUCTION.matcher(alt).find(), shape + ": " + alt);
        }
        List<String> drawn = wording.keys().stream()
                .filter(key -> key.startsWith("picture.") && !key.endsWith(".alt"))
                .map(key -> key.substring("picture.".length()).replaceAll("\\..*", ""))
                .distinct()
                .sorted()
                .toList();
        assertEquals(new ArrayList<>(shapes()), drawn);
    }

    /** A drawn window is empty: a number in it could be taken for the dose of tonight. */
    @Test
    void leavesEveryWindowEmpty() throws IOException {
        int windows = 0;
        for (String file : files()) {
            assertFalse(file.contains("<text"), "no words and no digits of a font in a picture");
            for (MatchResult window : Pattern.compile("<rect class=\"window\"[^>]*/>\\s*(<[^>]*>)")
                    .matcher(file)
                    .results()
                    .toList()) {
                windows++;
                assertTrue(window.group(1).startsWith("<rect x=\"82\""), "the dial follows, nothing in the window");
            }
        }
        assertEquals(1, windows, "one pen for all pictures");
    }

    /** Black on white alone, so that a copy loses nothing; every drawing has few lines, so that printing stays quick. */
    @Test
    void drawsInBlackAndWhiteWithFewLines() throws IOException {
        for (String file : files()) {
            Pattern.compile("(?:fill|stroke)=\"(#[^\"]*)\"")
                    .matcher(file)
                    .results()
                    .forEach(match -> assertTrue(match.group(1).matches("#(?:000|fff)"), match.group()));
        }
        String card = EveningCardsTest.page(new DemoPlan(1), "en");
        for (String drawing : card.split("<svg ")) {
            int lines = drawing.split("<(?:path|rect|circle|ellipse) ").length - 1;
            assertTrue(
                    lines <= 40,
                    lines + " lines in " + drawing.lines().findFirst().orElseThrow());
        }
    }
}

package cyclepacket.intake;

import cyclepacket.finding.Finding;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Our own sentences for the places where a file stops being YAML. */
final class SyntaxWords {
    private static final String QUOTES = "put text that holds special characters in quotes";

    /** A cause as the parser names it, in its context or its problem, and what we say. The first that fits is taken. */
    private static final List<Words> WORDS = List.of(
            new Words("quoted scalar", "a quote that opens here is never closed", "close the quote", true),
            new Words(
                    "flow sequence",
                    "this list is not closed, or a comma is missing",
                    "check the commas and the ]",
                    false),
            new Words(
                    "flow mapping",
                    "these braces are not closed, or a comma is missing",
                    "check the commas and the }",
                    false),
            new Words(
                    "mapping values are not allowed",
                    "a second colon on this line, or too many spaces in front of it",
                    "put text that holds a colon in quotes, and line the key up with its neighbours",
                    false),
            new Words(
                    "could not find expected ':'",
                    "this key has no colon",
                    "write the key, a colon, a space and the value",
                    true),
            new Words(
                    "block sequence",
                    "this line fits into no list",
                    "line it up with the other lines of its list",
                    false),
            new Words(
                    "block mapping",
                    "this line lines up with no key above it",
                    "line it up with its neighbours",
                    false),
            new Words("cannot start any token", "a value cannot start with this character", QUOTES, false),
            new Words(
                    "escape",
                    "this backslash means nothing in double quotes",
                    "use single quotes, or write two backslashes",
                    false),
            new Words("document start", "the file goes on after its end", "keep one document in the file", false));

    private SyntaxWords() {}

    static Finding finding(Source source, YamlEngineException error) {
        if (error instanceof MarkedYamlEngineException marked) {
            String cause = String.valueOf(marked.getProblem()) + " / " + String.valueOf(marked.getContext());
            for (Words words : WORDS) {
                if (cause.contains(words.cause)) {
                    Optional<Mark> mark =
                            words.pointsAtContext && marked.getContextMark().isPresent()
                                    ? marked.getContextMark()
                                    : marked.getProblemMark();
                    return source.stop("YAML-SYNTAX", spot(mark), words.text, words.mend);
                }
            }
            return unreadable(source, spot(marked.getProblemMark()));
        }
        return unreadable(source, Spot.START);
    }

    private static Finding unreadable(Source source, Spot spot) {
        return source.stop("YAML-SYNTAX", spot, "from here on the file cannot be read as YAML", QUOTES);
    }

    static Spot spot(Optional<Mark> mark) {
        return mark.map(m -> new Spot(m.getLine() + 1, m.getColumn() + 1)).orElse(Spot.START);
    }

    private record Words(String cause, String text, String mend, boolean pointsAtContext) {}
}

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

    /** A cause as the parser names it, in its problem or its context, and what we say. The first that fits is taken. */
    private static final List<Words> WORDS = List.of(
            new Words("escape", At.NOTICED, "this backslash means nothing in double quotes", "use single quotes"),
            new Words("quoted scalar", At.BEGIN, "a quote that opens here is never closed", "close the quote"),
            new Words(
                    "flow sequence",
                    At.BEGIN_ABOVE,
                    "this list is not closed, or lacks a comma",
                    "check its commas and its ]"),
            new Words(
                    "flow mapping",
                    At.BEGIN_ABOVE,
                    "these braces are not closed, or lack a comma",
                    "check commas and }"),
            new Words(
                    "mapping values are",
                    At.NOTICED,
                    "a second colon on this line, or too many spaces before it",
                    "put text that holds a colon in quotes, and line the key up with its neighbours"),
            new Words(
                    "expected ':'", At.BEGIN, "this key has no colon", "write the key, a colon, a space and the value"),
            new Words(
                    "block sequence",
                    At.NOTICED,
                    "this line fits into no list",
                    "line it up with the rest of its list"),
            new Words(
                    "block mapping",
                    At.NOTICED,
                    "this line lines up with no key above it",
                    "line it up with its neighbours"),
            new Words("start any token", At.NOTICED, "a value cannot start with this character", QUOTES),
            new Words("document start", At.NOTICED, "the file goes on after its end", "keep one document in the file"));

    private SyntaxWords() {}

    static Finding finding(Source source, YamlEngineException error) {
        if (error instanceof MarkedYamlEngineException marked) {
            String cause = String.valueOf(marked.getProblem()) + " / " + String.valueOf(marked.getContext());
            for (Words words : WORDS) {
                if (cause.contains(words.cause)) {
                    return source.stop("YAML-SYNTAX", spot(words.at, marked), words.text, words.mend);
                }
            }
            return unreadable(source, spot(marked.getProblemMark()));
        }
        return unreadable(source, Spot.START);
    }

    private static Spot spot(At at, MarkedYamlEngineException error) {
        Spot noticed = spot(error.getProblemMark());
        Spot began = error.getContextMark().isPresent() ? spot(error.getContextMark()) : noticed;
        return switch (at) {
            case NOTICED -> noticed;
            case BEGIN -> began;
            case BEGIN_ABOVE -> began.line() == noticed.line() ? noticed : began;
        };
    }

    private static Finding unreadable(Source source, Spot spot) {
        return source.stop("YAML-SYNTAX", spot, "from here on the file cannot be read as YAML", QUOTES);
    }

    static Spot spot(Optional<Mark> mark) {
        return mark.map(m -> new Spot(m.getLine() + 1, m.getColumn() + 1)).orElse(Spot.START);
    }

    private record Words(String cause, At at, String text, String mend) {}

    /** Which of the parser's two marks helps a person. */
    private enum At {
        /** Where the parser noticed it. */
        NOTICED,
        /** Where the broken piece began. */
        BEGIN,
        /** Where it began, when that is on an earlier line. */
        BEGIN_ABOVE
    }
}

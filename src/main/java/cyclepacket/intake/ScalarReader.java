package cyclepacket.intake;

import cyclepacket.finding.Finding;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.ScalarEvent;

/** Reads one single value: its kind, and that it is one line of visible text. */
final class ScalarReader {
    private ScalarReader() {}

    static Tree.Scalar read(Source source, ScalarEvent event, Optional<Spot> key, List<Finding> found) {
        Spot start = SyntaxWords.spot(event.getStartMark());
        Spot end = SyntaxWords.spot(event.getEndMark());
        boolean isBlock = event.getScalarStyle() == ScalarStyle.LITERAL || event.getScalarStyle() == ScalarStyle.FOLDED;
        String text = isBlock ? withoutLastBreaks(event.getValue()) : event.getValue();
        if (event.isPlain()) {
            Tree.Kind kind = ScalarKind.ofPlain(text);
            // An empty value starts behind the colon, where a caret shows nothing; its key is what people look for.
            Spot spot = text.isEmpty() ? key.orElse(start) : start;
            return new Tree.Scalar(spot, end, kind, text);
        }
        Optional<Finding> hidden = hidden(source, start, text);
        hidden.ifPresent(found::add);
        return new Tree.Scalar(start, end, hidden.isPresent() ? Tree.Kind.REFUSED : Tree.Kind.TEXT, text);
    }

    /** Escapes in double quotes can bring in what the bare text of the file does not show. */
    private static Optional<Finding> hidden(Source source, Spot spot, String text) {
        if (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0) {
            return Optional.of(source.stop(
                    "TEXT-LINE-BREAK",
                    spot,
                    "this text holds a line break",
                    "write it on one line, or start it with >-"));
        }
        OptionalInt refused = Characters.firstRefusedInValue(text);
        return refused.isPresent()
                ? Optional.of(SourceCheck.hidden(source, spot, refused.getAsInt()))
                : Optional.empty();
    }

    private static String withoutLastBreaks(String text) {
        int end = text.length();
        while (end > 0 && text.charAt(end - 1) == '\n') {
            end--;
        }
        return text.substring(0, end);
    }
}

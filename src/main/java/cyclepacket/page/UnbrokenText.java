package cyclepacket.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Keeps what is read as one on one line, also where the renderer would break after a full stop or a colon. */
final class UnbrokenText {
    private static final Pattern STYLE_OR_TAG_OR_TEXT =
            Pattern.compile("<(style|title)[^>]*>.*?</\\1>|<[^>]*>|[^<]+", Pattern.DOTALL);
    /**
     * Words joined by a no-break space; the code of an issue, which a person compares letter by letter; a measure as a
     * clinic wrote it; an hour; and a day such as T-1.
     */
    private static final Pattern JOINED = Pattern.compile(String.join(
            "|",
            "[^\\s\u00a0]+(?:\u00a0+[^\\s\u00a0]+)+",
            "\\b[0-9A-Z]{4}-[0-9A-Z]{4}-[0-9A-Z]{3}\\b",
            "[^\\s\u00a0]*\\d (?:mL|mg|mm|cm|lb|kg|°F|°C)(?![\\w\u00a0])[,.;)]*",
            "\\b\\d{1,2}:\\d\\d\\b[,.;)]*",
            "\\b[A-Z][A-Z0-9]{0,2}-\\d{1,2}\\b[,.;)]*"));

    private UnbrokenText() {}

    /** The same XHTML, with a {@code nowrap} span around each run of joined words in its text. */
    static String keepTogether(String xhtml) {
        Matcher pieces = STYLE_OR_TAG_OR_TEXT.matcher(xhtml);
        StringBuilder kept = new StringBuilder(xhtml.length());
        while (pieces.find()) {
            String piece = pieces.group();
            kept.append(piece.charAt(0) == '<' ? piece : wrapped(piece));
        }
        return kept.toString();
    }

    private static String wrapped(String text) {
        return JOINED.matcher(text)
                .replaceAll(run -> "<span class=\"nowrap\">" + Matcher.quoteReplacement(run.group()) + "</span>");
    }
}

package cyclepacket.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Keeps words that are joined by a no-break space on one line, also where the renderer would break after a full stop. */
final class UnbrokenText {
    private static final Pattern STYLE_OR_TAG_OR_TEXT =
            Pattern.compile("<(style|title)[^>]*>.*?</\\1>|<[^>]*>|[^<]+", Pattern.DOTALL);
    /** Words joined so, and the code of an issue, which a person compares letter by letter. */
    private static final Pattern JOINED =
            Pattern.compile("[^\\s\u00a0]+(?:\u00a0+[^\\s\u00a0]+)+|\\b[0-9A-Z]{4}-[0-9A-Z]{4}-[0-9A-Z]{3}\\b");

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

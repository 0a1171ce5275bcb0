package cyclepacket.pdf;

import cyclepacket.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Looks for unprintable characters in what a style sheet itself adds to the page. */
final class StyleText {
    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
    private static final Pattern STRING = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"|'((?:[^'\\\\]|\\\\.)*)'");
    private static final Pattern ESCAPE = Pattern.compile("\\\\([0-9A-Fa-f]{1,6})\\s?");
    private final GlyphRule glyphs;

    StyleText(GlyphRule glyphs) {
        this.glyphs = glyphs;
    }

    List<Finding> check(String css) {
        List<Finding> findings = new ArrayList<>();
        Matcher strings = STRING.matcher(COMMENT.matcher(css).replaceAll(" "));
        while (strings.find()) {
            String text = strings.group(1) != null ? strings.group(1) : strings.group(2);
            findings.addAll(glyphs.check(unescaped(text)));
        }
        return findings;
    }

    private static String unescaped(String text) {
        return ESCAPE.matcher(text).replaceAll(found -> {
            int codePoint = Integer.parseInt(found.group(1), 16);
            return Matcher.quoteReplacement(Character.isValidCodePoint(codePoint) ? Character.toString(codePoint) : "");
        });
    }
}

package cyclepacket.page;

import freemarker.core.HTMLOutputFormat;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Texts of the clinic's files that nobody translated, named in the page as passages of their own language, so that a voice
 * reads them aloud in it (PDF/UA-1, 7.2). Whatever stands inside a drawing, a tag or the head of the page stays as it is.
 */
final class ClinicPassages {
    private static final Pattern PIECE = Pattern.compile("(?s)<svg\\b.*?</svg>|<[^>]*>|[^<]+");
    private static final Pattern SPACE = Pattern.compile("[ \u00a0]+");

    private final String language;
    private final Pattern texts;

    private ClinicPassages(String language, List<String> texts) {
        this.language = language;
        this.texts = Pattern.compile("(?<![\\p{L}\\p{N}])(?:"
                + texts.stream()
                        .sorted(Comparator.comparingInt(String::length)
                                .reversed()
                                .thenComparing(Comparator.naturalOrder()))
                        .map(ClinicPassages::pattern)
                        .collect(Collectors.joining("|"))
                + ")(?![\\p{L}\\p{N}])");
    }

    /**
     * The page with these texts marked; the same page when there are none.
     *
     * @param language which language the texts are in
     */
    static String mark(String page, String language, List<String> texts) {
        int body = page.indexOf("<body");
        return texts.isEmpty() || body < 0
                ? page
                : page.substring(0, body) + new ClinicPassages(language, texts).marked(page.substring(body));
    }

    /** A text as it stands on the page: escaped, its spaces of either kind, its first letter large or small. */
    private static String pattern(String text) {
        String words = SPACE.splitAsStream(text.strip())
                .map(word -> Pattern.quote(HTMLOutputFormat.INSTANCE.escapePlainText(word)))
                .collect(Collectors.joining("[ \\u00a0]+"));
        String capital = text.strip().substring(0, 1).toUpperCase(Locale.ROOT)
                + text.strip().substring(1);
        return capital.equals(text.strip()) ? words : words + "|" + pattern(capital);
    }

    private String marked(String body) {
        Matcher pieces = PIECE.matcher(body);
        StringBuilder page = new StringBuilder(body.length());
        while (pieces.find()) {
            String piece = pieces.group();
            page.append(
                    piece.startsWith("<")
                            ? piece
                            : texts.matcher(piece)
                                    .replaceAll(found -> Matcher.quoteReplacement("<span lang=\"" + language
                                            + "\" xml:lang=\"" + language + "\">" + found.group() + "</span>")));
        }
        return page.toString();
    }
}

package cyclepacket.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A page that a browser shows with nothing but its own file: the fonts travel inside it. */
public final class StandalonePage {
    private static final String HEAD_END = "</head>";

    private record Face(String family, String weight, String file) {}

    private static final List<Face> FACES = List.of(
            new Face("Andika", "400", "Andika-Regular.ttf"),
            new Face("Andika", "700", "Andika-Bold.ttf"),
            new Face("Noto Sans", "400", "NotoSans-Regular.ttf"),
            new Face("Noto Sans", "700", "NotoSans-Bold.ttf"),
            new Face("Noto Sans Symbols 2", "400", "NotoSansSymbols2-Regular.ttf"));

    private static final Pattern PART = Pattern.compile("<div class=\"part ([^\"]*)\"[^>]*>");

    /** A sheet's width keeps the lines as long as they are on paper; page numbers exist on paper alone. */
    private static final String SCREEN = ".head, .foot, .door-head, .door-foot, .page-of { display: none; }\n"
            + "table.contents a:after { content: none; }\n"
            + ".own-lines { border-bottom: 0.75pt solid #000; margin: 0 0 10pt 0; }\n"
            + "@media screen { body { max-width: 540pt; margin: 24pt auto; }\n"
            + ".part { border-top: 6pt double #000; margin-top: 36pt; padding-top: 12pt; } }\n";

    private StandalonePage() {}

    /**
     * The page with its fonts, as bytes in UTF-8.
     *
     * @param templates the folder whose {@code fonts} are put in
     */
    public static byte[] of(String xhtml, Path templates) throws IOException {
        StringBuilder style = new StringBuilder("<style type=\"text/css\">\n");
        for (Face face : FACES) {
            byte[] font = Files.readAllBytes(templates.resolve("fonts").resolve(face.file()));
            style.append("@font-face { font-family: \"")
                    .append(face.family())
                    .append("\"; font-weight: ")
                    .append(face.weight())
                    .append("; src: url(data:font/ttf;base64,")
                    .append(Base64.getEncoder().encodeToString(font))
                    .append("); }\n");
        }
        style.append(SCREEN).append("</style>\n");
        String page = withHeads(xhtml);
        int head = page.indexOf(HEAD_END);
        if (head < 0) {
            throw new TemplateFault("the page has no head", new IllegalStateException(HEAD_END));
        }
        String whole = page.substring(0, head) + style + page.substring(head);
        return whole.getBytes(StandardCharsets.UTF_8);
    }

    /** A browser has no running lines, so each part carries its own: who it is for, which issue, and whether a draft. */
    private static String withHeads(String xhtml) {
        String others = running(xhtml, "head") + running(xhtml, "foot");
        String door = running(xhtml, "door-head") + running(xhtml, "door-foot");
        Matcher parts = PART.matcher(xhtml);
        StringBuilder page = new StringBuilder();
        while (parts.find()) {
            String lines = parts.group(1).contains("door") ? door : others;
            parts.appendReplacement(
                    page, Matcher.quoteReplacement(parts.group() + "<div class=\"own-lines\">" + lines + "</div>"));
        }
        return parts.appendTail(page).toString();
    }

    private static String running(String xhtml, String name) {
        Matcher block = Pattern.compile("<div class=\"" + name + "\">(.*?)</div>", Pattern.DOTALL)
                .matcher(xhtml);
        return block.find() ? block.group(1) : "";
    }
}

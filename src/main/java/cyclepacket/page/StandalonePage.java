package cyclepacket.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;

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
        // On a screen there are no pages: a sheet's width keeps the lines as long as they are on paper.
        style.append("@media screen { body { max-width: 540pt; margin: 24pt auto; } }\n</style>\n");
        int head = xhtml.indexOf(HEAD_END);
        if (head < 0) {
            throw new TemplateFault("the page has no head", new IllegalStateException(HEAD_END));
        }
        String whole = xhtml.substring(0, head) + style + xhtml.substring(head);
        return whole.getBytes(StandardCharsets.UTF_8);
    }
}

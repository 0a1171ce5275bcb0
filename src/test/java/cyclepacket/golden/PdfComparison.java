package cyclepacket.golden;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What a reader of two PDFs of one renderer would be told: first what they say, and only then how they look. */
final class PdfComparison {
    /** Per kind; the first few lines tell what happened. */
    private static final int SHOWN = 8;

    private final List<String> differences = new ArrayList<>();

    private PdfComparison() {}

    /** One sentence for each difference; none when they say and look the same. */
    static List<String> of(byte[] was, byte[] is) {
        if (Arrays.equals(was, is)) {
            return List.of();
        }
        PdfComparison comparison = new PdfComparison();
        PdfMeaning old = PdfMeaning.of(was);
        PdfMeaning made = PdfMeaning.of(is);
        comparison.meaning(old, made);
        if (comparison.differences.isEmpty()) {
            PdfLooks.different(was, is, old, made)
                    .forEach(page ->
                            comparison.differences.add("LOOKS page " + page + " says the same and looks different"));
        }
        return List.copyOf(comparison.differences);
    }

    private void meaning(PdfMeaning old, PdfMeaning made) {
        lines("fact", old.facts(), made.facts());
        if (old.pages().size() != made.pages().size()) {
            differences.add("MEANING " + old.pages().size() + " pages became "
                    + made.pages().size());
        }
        for (int page = 0; page < Math.min(old.pages().size(), made.pages().size()); page++) {
            lines("page " + (page + 1), old.pages().get(page), made.pages().get(page));
        }
        lines("bookmark", old.bookmarks(), made.bookmarks());
        lines("structure", old.structure(), made.structure());
    }

    private void lines(String where, List<String> old, List<String> made) {
        int shown = 0;
        for (int line = 0; line < Math.max(old.size(), made.size()) && shown < SHOWN; line++) {
            String before = line < old.size() ? old.get(line) : "nothing";
            String after = line < made.size() ? made.get(line) : "nothing";
            if (!before.equals(after)) {
                differences.add(
                        "MEANING " + where + ", line " + (line + 1) + ": \"" + before + "\" became \"" + after + "\"");
                shown++;
            }
        }
    }
}

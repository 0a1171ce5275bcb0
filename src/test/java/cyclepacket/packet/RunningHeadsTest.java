package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.pdf.PdfText;
import cyclepacket.pdf.TaggedBlock;
import cyclepacket.pdf.TaggedText;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A page that is taken out of the packet still says what it is about: by its title, or in its head. */
class RunningHeadsTest {
    private static final String MORE = "\\((?:continued|sigue)\\)";

    static Stream<String> packets() throws IOException {
        return Stream.concat(
                PrintedDemo.plans().stream()
                        .flatMap(plan -> PrintedDemo.LANGUAGES.stream()
                                .map(language -> String.join(" ", plan, language, "standard", "letter"))),
                Stream.of("SM-04417 es large letter", "SM-04417 es standard A4"));
    }

    @ParameterizedTest
    @MethodSource("packets")
    void saysOnEachPageWhatItBelongsTo(String name) throws IOException {
        String[] way = name.split(" ");
        byte[] packet = PrintedDemo.of(way[0], way[1], way[2], way[3]).pdf();
        List<TaggedBlock> blocks = TaggedText.of(packet);
        List<String> pages = PdfText.lines(packet);
        List<String> unnamed = new ArrayList<>();
        int continued = 0;
        for (int page = 1; page <= pages.size(); page++) {
            int number = page;
            boolean isMore = head(pages.get(page - 1)).matches("(?s).*" + MORE + ".*");
            boolean isTitled = blocks.stream()
                    .filter(block -> block.page() == number)
                    .anyMatch(block -> block.role().equals("H1") || block.role().equals("H2"));
            boolean startsAPart = blocks.stream()
                    .filter(block -> block.page() == number)
                    .findFirst()
                    .filter(block -> block.role().equals("H1"))
                    .isPresent();
            assertFalse(isMore && startsAPart, "page " + page + " begins a part and says that it goes on with one");
            continued += isMore ? 1 : 0;
            if (!isMore && !isTitled) {
                unnamed.add("page " + page);
            }
        }
        assertEquals(List.of(), unnamed);
        assertTrue(continued > 0, "no part runs over one page");
    }

    /** The running lines above the text: at most four, the banner and the names. */
    private static String head(String page) {
        return String.join("\n", page.strip().lines().limit(4).toList());
    }

    /** On-call staff read the texts without the packet: a page number of it would be a gap. */
    @Test
    void leavesPageNumbersOutOfTheTextsSideBySide() throws IOException {
        String beside = String.join(
                "\n",
                PdfText.lines(PrintedDemo.of("SM-04417", "es", "standard", "letter")
                        .beside()
                        .orElseThrow()));
        assertFalse(beside.matches("(?s).*\\((?:página|page)[ \u00a0]*\\).*"), beside);
        assertTrue(beside.contains("Mire la tabla."), beside);
    }
}

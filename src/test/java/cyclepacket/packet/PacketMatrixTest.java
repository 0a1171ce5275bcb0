package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Finding;
import cyclepacket.finding.FindingText;
import cyclepacket.finding.Severity;
import cyclepacket.page.TidyPages;
import cyclepacket.pdf.Conformity;
import cyclepacket.plan.Plan;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Demo packets in each language, size of print and paper, Spanish ones with their pages in two languages: published rules
 * for PDF, no error-prone form, grade 6 or below, tidy pages. Every plan once, each time another way; all of them with
 * {@code -Dmatrix=all}. {@link PacketWordsTest} holds every plan to the same in standard print on Letter.
 */
class PacketMatrixTest {
    private static final WordingCheck CHECK = new WordingCheck(Path.of(""));

    /** A way to print: language, size of print, paper. */
    private static List<List<String>> ways() {
        List<List<String>> ways = new ArrayList<>();
        for (String language : PrintedDemo.LANGUAGES) {
            for (String size : PrintedDemo.SIZES) {
                PrintedDemo.PAPERS.forEach(paper -> ways.add(List.of(language, size, paper)));
            }
        }
        return ways;
    }

    static Stream<String> packets() throws IOException {
        boolean isWhole = "all".equals(System.getProperty("matrix"));
        List<List<String>> ways = ways();
        // Standard print on Letter is printed in other tests, for every plan.
        List<List<String>> others = ways.stream()
                .filter(way -> way.contains("large") || way.contains("A4"))
                .toList();
        List<String> packets = new ArrayList<>();
        List<String> plans = PrintedDemo.plans();
        for (int at = 0; at < plans.size(); at++) {
            for (List<String> way : isWhole ? ways : List.of(others.get(at % others.size()))) {
                packets.add(plans.get(at) + " " + String.join(" ", way));
            }
        }
        return packets.stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("packets")
    void conformsAndSpeaksPlainly(String name) throws IOException {
        String[] parts = name.split(" ");
        PrintedDemo.Packet packet = PrintedDemo.of(parts[0], parts[1], parts[2], parts[3]);
        Conformity.assertConforms(packet.pdf());
        // The last lines of a list in large print may need a page of their own.
        Plan.TextSize size = Plan.TextSize.valueOf(parts[2].toUpperCase(Locale.ROOT));
        TidyPages.check(name, packet.pdf(), size, size == Plan.TextSize.LARGE ? 1.0 / 4 : 1.0 / 3);
        TidyPages.checkRules(name, packet.pdf());
        List<Finding> found = new ArrayList<>(CHECK.pdf(packet.pdf(), name));
        assertTrue(found.stream().anyMatch(finding -> finding.code().equals("WORDING-GRADE")), "a grade");
        found.removeIf(finding -> finding.severity() == Severity.NOTE);
        assertEquals("", FindingText.print(found));
        assertEquals(parts[1].equals("es"), packet.beside().isPresent());
        packet.beside().ifPresent(Conformity::assertConforms);
    }
}

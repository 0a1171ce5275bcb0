package cyclepacket.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.packet.Outcome;
import cyclepacket.packet.Press;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Packets that somebody looked at and kept. A change that should move nothing moves nothing; one that should is looked
 * at again and accepted with {@code mvn -B test -Dtest=GoldenTest -Dgolden.accept=true}.
 */
class GoldenTest {
    private static final Path KEPT = Path.of("src/test/resources/golden");

    @TempDir
    private static Path out;

    @BeforeAll
    static void prints() throws IOException {
        try (Press press = new Press(Path.of(""))) {
            for (String plan : List.of("SM-04417-issue-3", "LM-06233")) {
                Outcome outcome = press.print(Path.of("plans/patients", plan + ".yaml"), out, false, Instant.EPOCH);
                assertTrue(outcome.written().isPresent(), outcome.findings().toString());
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"SM-04417/issue-3/packet.pdf", "SM-04417/issue-3/chart.pdf", "LM-06233/issue-1/packet.pdf"})
    void saysAndLooksAsKept(String file) throws IOException {
        byte[] made = Files.readAllBytes(out.resolve(file));
        Path kept = KEPT.resolve(file.replace('/', '-'));
        if (Boolean.getBoolean("golden.accept")) {
            Files.write(kept, made);
        }
        assertEquals(
                List.of(),
                PdfComparison.of(Files.readAllBytes(kept), made),
                "look at the pages; if they are right: mvn -B test -Dtest=GoldenTest -Dgolden.accept=true");
    }

    @Test
    void keepsNoMoreThanItCompares() throws IOException {
        try (var files = Files.list(KEPT)) {
            assertEquals(3, files.count());
        }
    }
}

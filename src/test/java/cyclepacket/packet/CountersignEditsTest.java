package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.intake.PlanReader;
import cyclepacket.intake.Said;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class CountersignEditsTest {
    private static final Path SIGNED = Path.of("plans/patients/SM-04417-issue-3.yaml");

    @Test
    void isVoidedByEverySingleEditOfThePlan() throws IOException {
        assertTrue(CountersignCheck.of(PlanReader.read(SIGNED)).isValid());
        List<byte[]> edits = Said.withEachValueChanged(Files.readAllBytes(SIGNED));
        assertTrue(edits.size() > 80, "values: " + edits.size());
        for (byte[] edit : edits) {
            assertFalse(
                    CountersignCheck.of(PlanReader.read(SIGNED, edit)).isValid(),
                    () -> new String(edit, StandardCharsets.UTF_8));
        }
    }
}

package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.exchange.RegisterEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A clock that is wrong changes a line of the register and not one byte of a page. */
class ClockSetBackTest {
    @TempDir
    Path out;

    @Test
    void keepsBytesAndTheOrderOfTheRegister() throws IOException {
        Path plan = Path.of("plans/patients/SM-04417.yaml");
        try (Press press = new Press(Path.of("").toAbsolutePath())) {
            Outcome.Written first = print(press, plan, "2027-03-04T15:00:00Z");
            byte[] before = Files.readAllBytes(first.folder().resolve("packet.pdf"));
            byte[] chart = Files.readAllBytes(first.folder().resolve("chart.pdf"));
            Outcome.Written again = print(press, plan, "1970-01-01T00:00:00Z");
            assertTrue(again.isReprint());
            assertEquals(first.code(), again.code());
            assertArrayEquals(before, Files.readAllBytes(again.folder().resolve("packet.pdf")));
            assertArrayEquals(chart, Files.readAllBytes(again.folder().resolve("chart.pdf")));
        }
        List<RegisterEntry> entries = Register.of(out, "SM-04417").entries();
        assertEquals(
                List.of("printed 2027-03-04T15:00:00Z", "reprinted 1970-01-01T00:00:00Z"),
                entries.stream().map(entry -> entry.did() + " " + entry.at()).toList());
    }

    private Outcome.Written print(Press press, Path plan, String at) throws IOException {
        return press.print(plan, out, false, Instant.parse(at)).written().orElseThrow();
    }
}

package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RevisingTest {
    private static final Path HOME = Path.of("").toAbsolutePath();

    @TempDir
    Path folder;

    private Path plan;

    @BeforeEach
    void copies() throws IOException {
        try (Stream<Path> all = Files.walk(Path.of("plans"))) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Path target = folder.resolve(file);
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
        plan = folder.resolve("plans/patients/SM-04417-issue-2.yaml");
    }

    private Revising revising(String order, String change) throws IOException {
        Revise revise = new Revise(
                order,
                Optional.empty(),
                Optional.empty(),
                "T. Okonjo",
                Optional.empty(),
                "the patient",
                LocalDate.of(2027, 3, 9),
                true,
                List.of(Change.dose(change)));
        return Revising.of(plan, folder.resolve("out"), HOME, revise);
    }

    @Test
    void letsTheFirstWriterWinAndTellsTheSecond() throws IOException {
        Revising one = revising("ORD-1", "fsh-pen=200@2027-03-10");
        Revising other = revising("ORD-2", "fsh-pen=225@2027-03-10");
        Path left = Files.createFile(plan.resolveSibling(".changing-" + plan.getFileName() + "-1.tmp"));
        one.write();
        assertFalse(Files.exists(left), "a killed run left it");
        byte[] won = Files.readAllBytes(plan);
        assertThrows(ChangedMeanwhile.class, other::write);
        assertArrayEquals(won, Files.readAllBytes(plan));
        assertEquals(4, revising("ORD-3", "fsh-pen=225@2027-03-10").issue(), "it starts again from what was written");
        try (Stream<Path> files = Files.list(plan.getParent())) {
            assertTrue(files.noneMatch(file -> file.getFileName().toString().startsWith(".changing-")));
        }
    }

    @Test
    void keepsThePlanOfTheIssueItRetires() throws IOException {
        byte[] retired = Files.readAllBytes(plan);
        revising("ORD-1", "fsh-pen=200@2027-03-10").write();
        Path kept = KeptPlan.find(folder.resolve("out"), "SM-04417", 2).orElseThrow();
        assertArrayEquals(retired, Files.readAllBytes(kept));
    }

    @Test
    void writesOverADoseLineOfTheSameDay() throws IOException {
        revising("ORD-1", "fsh-pen=200@2027-03-09").write();
        String now = Files.readString(plan);
        assertTrue(now.contains("{from: 2027-03-09, amount: 200, order: ORD-1}"), now);
        assertFalse(now.contains("amount: 212.5"), now);
    }

    @Test
    void readsChangesAsTheyAreTyped() {
        assertEquals(
                Optional.of("2027-03-10"), Change.hold("fsh-pen@2027-03-10").lastDay());
        assertEquals(
                Optional.of("2027-03-11"),
                Change.hold("fsh-pen@2027-03-10..2027-03-11").lastDay());
        assertEquals(
                Optional.of("21:00"), Change.hour("evening=21:00@2027-03-10").now());
        for (String wrong : List.of("", "fsh-pen", "fsh-pen=200", "fsh-pen@", "fsh-pen=200@a@b", "a=b=c@d")) {
            assertThrows(Unclear.class, () -> Change.dose(wrong), wrong);
        }
    }
}

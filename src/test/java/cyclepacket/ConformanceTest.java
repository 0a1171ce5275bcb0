package cyclepacket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Checked;
import cyclepacket.finding.FindingText;
import cyclepacket.intake.PlanReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Runs every case folder. A case is a small overlay on {@code plans/}: its files replace those of the same name, and a
 * file called {@code x.removed} takes {@code x} away. The plan that is read is the one under {@code patients/} of the
 * case, or the first demo plan.
 */
class ConformanceTest {
    private static final Path CASES = Path.of("src/test/resources/conformance");
    private static final Path BASE = Path.of("plans");
    private static final String EXPECTED = "findings.txt";
    private static final String REMOVED = ".removed";

    /** Everything a case goes through; all of its findings are compared. */
    private static Checked<?> check(Path plan) throws IOException {
        return PlanReader.read(plan).files();
    }

    @TestFactory
    Stream<DynamicTest> refusesEveryRejectCase() throws IOException {
        return folders("reject")
                .map(folder -> DynamicTest.dynamicTest(folder.getFileName().toString(), () -> {
                    Overlay overlay = Overlay.lay(folder);
                    Checked<?> result = check(overlay.plan);
                    assertTrue(result.value().isEmpty(), "a refused plan gives no records");
                    assertSameBlocks(Files.readString(folder.resolve(EXPECTED)), overlay.shown(result));
                }));
    }

    @TestFactory
    Stream<DynamicTest> acceptsEveryAcceptCase() throws IOException {
        return folders("accept")
                .map(folder -> DynamicTest.dynamicTest(folder.getFileName().toString(), () -> {
                    Overlay overlay = Overlay.lay(folder);
                    Checked<?> result = check(overlay.plan);
                    assertEquals("", overlay.shown(result));
                    assertTrue(result.value().isPresent());
                }));
    }

    @Test
    void findsItsCases() throws IOException {
        assertTrue(folders("reject").count() >= 45);
        assertTrue(folders("accept").count() >= 5);
    }

    @Test
    void noticesAMissingAndAnUnexpectedFinding() {
        String one = "a:1:1: stop: x   [X]\n   mend: y\n";
        String two = "a:2:1: stop: z   [Z]\n   mend: y\n";
        assertEquals(List.of(), difference(one + two, one + two));
        assertEquals(List.of("missing: " + two), difference(one + two, one));
        assertEquals(List.of("unexpected: " + two), difference(one, one + two));
        assertEquals(List.of("unexpected: " + one), difference(one, one + one));
        assertFalse(difference(one, one.replace("mend: y", "mend: z")).isEmpty());
    }

    private static Stream<Path> folders(String kind) throws IOException {
        try (Stream<Path> folders = Files.list(CASES.resolve(kind))) {
            return folders.filter(Files::isDirectory).sorted().toList().stream();
        }
    }

    private static void assertSameBlocks(String expected, String actual) {
        List<String> difference = difference(expected, actual);
        assertTrue(difference.isEmpty(), () -> "\n" + String.join("\n", difference));
        assertEquals(expected, actual, "the same findings in another order");
    }

    private static List<String> difference(String expected, String actual) {
        List<String> missing = new ArrayList<>(blocks(expected));
        List<String> unexpected = new ArrayList<>();
        for (String block : blocks(actual)) {
            if (!missing.remove(block)) {
                unexpected.add("unexpected: " + block);
            }
        }
        List<String> difference = new ArrayList<>(
                missing.stream().map(block -> "missing: " + block).toList());
        difference.addAll(unexpected);
        return difference;
    }

    /** One finding a block: the lines of a block after its first are indented. */
    private static List<String> blocks(String text) {
        List<String> blocks = new ArrayList<>();
        for (String line : text.lines().toList()) {
            boolean continues = line.startsWith("   ") && !blocks.isEmpty();
            String before = continues ? blocks.remove(blocks.size() - 1) : "";
            blocks.add(before + line + "\n");
        }
        return blocks;
    }

    /** The files of one case over a fresh copy of the demo files. */
    private record Overlay(Path root, Path plan) {

        static Overlay lay(Path folder) throws IOException {
            Path root = Path.of("target", "conformance").resolve(CASES.relativize(folder));
            copy(BASE, root.resolve("plans"));
            copy(folder, root.resolve("plans"));
            Path own = folder.resolve("patients");
            String plan = "SM-04417.yaml";
            if (Files.isDirectory(own)) {
                try (Stream<Path> plans = Files.list(own)) {
                    plan = plans.sorted()
                            .findFirst()
                            .orElseThrow()
                            .getFileName()
                            .toString();
                }
            }
            return new Overlay(root, root.resolve("plans/patients").resolve(plan));
        }

        /** Findings as they are printed, with the paths that the case would have at the top of the project. */
        String shown(Checked<?> result) {
            return FindingText.print(result.findings()).replace(root.toString().replace('\\', '/') + "/", "");
        }

        private static void copy(Path from, Path to) throws IOException {
            List<Path> files;
            try (Stream<Path> all = Files.walk(from)) {
                files = all.filter(Files::isRegularFile).toList();
            }
            for (Path file : files) {
                Path target = to.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                if (file.toString().endsWith(REMOVED)) {
                    String name = target.getFileName().toString();
                    Files.deleteIfExists(target.resolveSibling(name.substring(0, name.length() - REMOVED.length())));
                } else if (!file.endsWith(EXPECTED)) {
                    Files.write(target, Files.readAllBytes(file));
                }
            }
        }
    }
}

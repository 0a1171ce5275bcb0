package cyclepacket.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Demo files bent at random never bring the program down, never hold it up, reach nothing outside their folders and never
 * become part of a page's own marks. {@code -Dhostile=100000} reads and checks that many, {@code -Dhostile.pdf=1000} takes
 * that many through to the PDF, {@code -Dhostile.seed=7} begins elsewhere. The figures go to {@code target/hostile.txt}.
 */
class HostileFilesTest {
    private static final int CHECKS = Integer.getInteger("hostile", 150);
    private static final int PACKETS = Integer.getInteger("hostile.pdf", 2);
    private static final long SEED = Long.getLong("hostile.seed", 20_270_305);

    @TempDir
    Path folder;

    @Test
    void bringNothingDown() throws IOException, InterruptedException {
        Path log = Path.of("target/hostile.txt");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-Djava.awt.headless=true"));
        if (CHECKS < 10_000) {
            command.add("-XX:TieredStopAtLevel=1");
        }
        if (Watched.canWatch()) {
            command.add("-Djava.security.manager=allow");
        }
        command.addAll(List.of("-cp", classPath(), Watched.class.getName()));
        command.addAll(List.of(folder.toString(), "" + SEED, "" + CHECKS, "" + PACKETS));
        Process run = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        assertTrue(run.waitFor(12, TimeUnit.HOURS));
        assertEquals(0, run.exitValue(), () -> "see " + log);
    }

    /** An empty entry would mean the folder we are in, and every class would be looked for there. */
    private static String classPath() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(entry -> !entry.isBlank())
                .collect(Collectors.joining(File.pathSeparator));
    }

    @Test
    void wholeFilesAreStillReadAfterBeingTakenApart() throws IOException {
        Demo demo = Demo.lay(folder);
        for (Path plan : demo.plans()) {
            for (Path file : demo.filesOf(plan)) {
                demo.put(
                        file,
                        YamlOut.write(demo.tree(file), 2, true).getBytes(java.nio.charset.StandardCharsets.UTF_8));
            }
            assertTrue(CheckRun.check(plan), plan.toString());
        }
    }
}

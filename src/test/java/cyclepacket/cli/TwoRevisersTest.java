package cyclepacket.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two people revise one plan at once, each with a program of their own that waits for a yes. */
class TwoRevisersTest {
    @TempDir
    Path folder;

    private Path plan;

    @BeforeEach
    void copies() throws IOException {
        plan = TypedRun.copyOfPlans(folder).resolve("SM-04417-issue-2.yaml");
    }

    private Process start(String order, String hour) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Dcyclepacket.home=" + Path.of("").toAbsolutePath(),
                "-cp",
                System.getProperty("java.class.path"),
                "cyclepacket.cli.Main"));
        command.addAll(List.of("revise", plan.toString(), "--order", order, "--by", "T. Okonjo (invented)"));
        command.addAll(List.of("--to", "the patient", "--on", "2027-03-09", "--read-back"));
        command.addAll(List.of("--hour", "evening=" + hour + "@2027-03-09"));
        command.addAll(List.of("--out", folder.resolve("out").toString()));
        return new ProcessBuilder(command)
                .redirectOutput(folder.resolve(order + ".out").toFile())
                .redirectError(folder.resolve(order + ".err").toFile())
                .start();
    }

    /** Both have read the plan once their question stands on the screen. */
    private void waitUntilItAsks(Process process, String order) throws IOException, InterruptedException {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        while (!Files.readString(folder.resolve(order + ".err")).contains("(yes or no)")) {
            assertTrue(process.isAlive() && System.nanoTime() < until, "it never asked");
            Thread.sleep(20);
        }
    }

    private static int answer(Process process) throws IOException, InterruptedException {
        process.getOutputStream().write("yes\n".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        process.getOutputStream().close();
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        return process.exitValue();
    }

    @Test
    void letsTheFirstYesWinAndTellsTheOther() throws IOException, InterruptedException {
        Process one = start("ORD-7", "21:00");
        Process other = start("ORD-8", "21:30");
        try {
            waitUntilItAsks(one, "ORD-7");
            waitUntilItAsks(other, "ORD-8");
            assertEquals(0, answer(other));
            String written = Files.readString(plan);
            assertEquals(1, answer(one));
            String told = Files.readString(folder.resolve("ORD-7.err"));
            assertTrue(told.contains("Somebody else changed"), told);
            assertEquals(written, Files.readString(plan));
            assertTrue(written.contains("ORD-8") && written.contains("issue: 3\nreplaces: 2\n"), written);
        } finally {
            one.destroyForcibly();
            other.destroyForcibly();
        }
    }
}

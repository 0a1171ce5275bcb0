package cyclepacket.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Programs that print issues of one plan into one folder at once: none of them is lost. */
class TwoPrintersTest {
    private static final List<String> PLANS = List.of("SM-04417", "SM-04417-issue-2", "SM-04417-issue-3");

    @TempDir
    Path folder;

    private Process start(Path plan, Path out) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-Dcyclepacket.home=" + Path.of("").toAbsolutePath(),
                "-cp",
                System.getProperty("java.class.path"),
                "cyclepacket.cli.Main"));
        command.addAll(List.of("packet", plan.toString(), "--out", out.toString()));
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve(plan.getFileName() + ".log").toFile())
                .start();
    }

    @Test
    void loseNoIssueOfEachOther() throws IOException, InterruptedException {
        Path plans = TypedRun.copyOfPlans(folder);
        Path out = folder.resolve("out");
        List<Process> programs = new ArrayList<>();
        for (String plan : PLANS) {
            programs.add(start(plans.resolve(plan + ".yaml"), out));
        }
        for (Process program : programs) {
            assertTrue(program.waitFor(120, TimeUnit.SECONDS));
            assertEquals(0, program.exitValue());
        }
        String register = Files.readString(out.resolve("SM-04417/register.json"));
        for (int issue = 1; issue <= PLANS.size(); issue++) {
            assertTrue(register.contains("\"issue\":" + issue + ","), register);
            assertTrue(Files.exists(out.resolve("SM-04417/issue-" + issue + "/packet.json")));
        }
        assertEquals(PLANS.size(), register.split("\"did\":\"printed\"", -1).length - 1, register);
    }
}

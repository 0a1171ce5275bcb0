package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.exchange.RegisterEntry;
import cyclepacket.intake.PlanReader;
import cyclepacket.intake.PlanText;
import cyclepacket.plan.Plan.Countersigned;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Kills a print run at random moments, and measures one that is left alone. {@code -Dkills=200} kills that often and
 * {@code -Dbatch=500} prints so many plans; the figures are written to {@code target/batch.txt}.
 */
class KilledBatchTest {
    private static final int KILLS = Integer.getInteger("kills", 1);
    private static final int PLANS = Integer.getInteger("batch", 2);
    private static final int KILLED_PLANS = 3;
    private static final Path PLACE = Path.of("target", "killed-batch").toAbsolutePath();
    private static final Pattern FILE = Pattern.compile("\\{\"name\":\"([^\"]+)\",\"sha256\":\"([0-9a-f]{64})\"}");

    private final Random moments = new Random(20270312);

    @BeforeAll
    static void laysOutCountersignedPlans() throws IOException {
        Durable.delete(PLACE);
        lay("many", PLANS);
        lay("few", KILLED_PLANS);
    }

    private static void lay(String name, int count) throws IOException {
        Path from = Path.of("plans");
        Path plans = PLACE.resolve(name);
        try (Stream<Path> all = Files.walk(from)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Path target = plans.resolve(from.relativize(file));
                Files.createDirectories(target.getParent());
                if (!file.getParent().endsWith("patients")) {
                    Files.copy(file, target);
                }
            }
        }
        String signed = Files.readString(from.resolve("patients/SM-04417-issue-3.yaml"));
        for (int number = 0; number < count; number++) {
            String id = String.format(Locale.ROOT, "KB-%05d", number);
            Path plan = plans.resolve("patients").resolve(id + ".yaml");
            byte[] unsigned = signed.replace("SM-04417", id).getBytes(StandardCharsets.UTF_8);
            Files.write(plan, unsigned);
            String code = Codes.countersign(PlanReader.read(plan, unsigned).sources());
            Countersigned sign = new Countersigned("R. Lindqvist (invented)", LocalDate.of(2027, 3, 12), code);
            Files.write(plan, PlanText.withCountersigned(unsigned, sign));
        }
    }

    private static Process start(String name, Path out) throws IOException {
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-Dcyclepacket.home=" + Path.of("").toAbsolutePath(),
                "-cp",
                System.getProperty("java.class.path"),
                "cyclepacket.cli.Main",
                "batch",
                PLACE.resolve(name).resolve("patients").toString(),
                "--on",
                "2027-03-12",
                "--out",
                out.toString());
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(PLACE.resolve(name + ".log").toFile())
                .start();
    }

    /** How long a whole run took, and the most memory it held, in kilobytes; 0 where the system does not tell. */
    private record Spent(long millis, long kilobytes) {}

    private static Spent run(String name, Path out) throws IOException, InterruptedException {
        long began = System.nanoTime();
        Process process = start(name, out);
        long until = began + TimeUnit.MINUTES.toNanos(60);
        long most = 0;
        while (!process.waitFor(50, TimeUnit.MILLISECONDS)) {
            most = Math.max(most, mostHeld(process.pid()));
            assertTrue(System.nanoTime() < until, "the run does not end");
        }
        assertEquals(0, process.exitValue(), Files.readString(PLACE.resolve(name + ".log")));
        return new Spent(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - began), most);
    }

    /** Linux writes the high water mark of a process into its folder; a process that just ended has none. */
    private static long mostHeld(long pid) {
        try {
            return Files.readAllLines(Path.of("/proc", Long.toString(pid), "status")).stream()
                    .filter(line -> line.startsWith("VmHWM:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                    .sum();
        } catch (IOException noSuchProcess) {
            return 0;
        }
    }

    @Test
    void printsThemAll() throws IOException, InterruptedException {
        Path out = PLACE.resolve("many-out");
        Spent spent = run("many", out);
        assertEquals(PLANS, check(out));
        Files.writeString(
                Path.of("target/batch.txt"),
                String.format(
                        Locale.ROOT,
                        "%d plans in %.1f s, start of the program included: %.1f packets a second with their chart"
                                + " copies, %d MB at the most%n",
                        PLANS,
                        spent.millis() / 1000.0,
                        PLANS * 1000.0 / spent.millis(),
                        spent.kilobytes() / 1024));
    }

    @Test
    void leavesNoHalfFileAndNoLostIssue() throws IOException, InterruptedException {
        Path out = PLACE.resolve("few-out");
        long whole = run("few", out).millis();
        for (int kill = 0; kill < KILLS; kill++) {
            if (moments.nextInt(3) > 0) {
                Durable.delete(out);
            }
            Process process = start("few", out);
            if (!process.waitFor(moments.nextLong(whole), TimeUnit.MILLISECONDS)) {
                process.destroyForcibly().waitFor();
            }
            check(out);
        }
        run("few", out);
        assertEquals(KILLED_PLANS, check(out));
        assertTrue(Files.exists(out.resolve("batch-2027-03-12/003-b-packet.pdf")));
    }

    /** Every folder that is there is whole, and every issue of a register is there; gives how many are. */
    private static int check(Path out) throws IOException {
        int whole = 0;
        if (!Files.isDirectory(out)) {
            return whole;
        }
        try (Stream<Path> all = Files.list(out)) {
            for (Path plan : all.filter(Files::isDirectory).toList()) {
                Path issue = plan.resolve("issue-3");
                if (Files.isDirectory(issue)) {
                    isWhole(issue);
                    whole++;
                }
            }
        }
        for (Register register : Register.all(out)) {
            for (RegisterEntry entry : register.entries()) {
                Path folder = new OutFolder(out, register.plan(), entry.issue()).path();
                assertTrue(Files.isDirectory(folder) || isAside(folder), "lost: " + folder);
            }
        }
        return whole;
    }

    private static void isWhole(Path issue) throws IOException {
        Matcher files = FILE.matcher(Files.readString(issue.resolve("packet.json")));
        int count = 0;
        while (files.find()) {
            byte[] bytes = Files.readAllBytes(issue.resolve(files.group(1)));
            assertEquals(
                    files.group(2),
                    HexFormat.of().formatHex(CheckedCode.sha256().digest(bytes)));
            count++;
        }
        assertTrue(count >= 2, issue.toString());
    }

    /** Moved aside for the next run, which puts it back. */
    private static boolean isAside(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder.getParent(), 2)) {
            return all.anyMatch(
                    path -> path.getParent().getFileName().toString().startsWith(".replaced-"));
        }
    }
}

package cyclepacket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.cli.CommandLines;
import cyclepacket.cli.Terminal;
import cyclepacket.packet.Press;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the two documents show is run: commands answer, files exist, lines of YAML stand in the examples. */
class DocsTest {
    /** One indented line, and the lines that a backslash joins to it; three spaces part it from its explanation. */
    private static final Pattern COMMAND =
            Pattern.compile("^    \\./cyclepacket ((?:[^\\\\\n]|\\\\\n)+)", Pattern.MULTILINE);

    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final List<String> SECOND_LOOK = List.of(
            "7730418", "2027-03-05", "2027-03-09 212.5", "2027-03-15 08:30", "87.5", "600 900", "5x0.25", "250");
    private static final Pattern YAML = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL);
    private static final Pattern FINDING =
            Pattern.compile("^    (plans/\\S+?):(\\d+):(\\d+): stop: .*\\[([A-Z-]+)]", Pattern.MULTILINE);

    @TempDir
    Path folder;

    private static String readme() throws IOException {
        return Files.readString(Path.of("README.md"));
    }

    private int run(String... args) {
        return run(new ByteArrayOutputStream(), args);
    }

    private int run(ByteArrayOutputStream out, String... args) {
        return answering("", out, args);
    }

    private static int answering(String answers, ByteArrayOutputStream out, String... args) {
        return CommandLines.run(
                new Terminal(
                        new BufferedReader(new StringReader(answers)),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        Clock.systemUTC(),
                        Path.of("").toAbsolutePath()),
                args);
    }

    /** The words of a shown command; its scratch folder lies in the test's own. */
    private List<String> words(String shown) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(shown.replace("\\\n", " ").split(" {3,}(?!\\s*-)")[0]);
        while (word.find()) {
            String text = word.group(1) == null ? word.group(2) : word.group(1);
            words.add(text.startsWith("scratch") ? folder.resolve(text).toString() : text);
        }
        return words;
    }

    private void layScratchFolder() throws IOException {
        Path plans = Path.of("plans");
        try (Stream<Path> all = Files.walk(plans)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Path target = folder.resolve("scratch").resolve(plans.relativize(file));
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
    }

    /** In their order, because one leads to the next. The demo is built by other tests. */
    @Test
    void runsEveryCommandOfTheReadme() throws IOException {
        List<String> seen = new ArrayList<>();
        layScratchFolder();
        Matcher command = COMMAND.matcher(readme());
        while (command.find()) {
            List<String> words = words(command.group(1));
            seen.add(words.get(0));
            assertEquals(0, run(words.get(0), "--help"), command.group());
            if (words.contains("PLAN") || words.contains("demo")) {
                continue;
            }
            if (words.contains("packet") && !words.contains("--out")) {
                words.addAll(List.of("--out", folder.resolve("out").toString()));
            }
            String answers = words.contains("countersign") ? String.join("\n", SECOND_LOOK) : "yes";
            ByteArrayOutputStream said = new ByteArrayOutputStream();
            int exit = answering(answers + "\n", said, words.toArray(String[]::new));
            assertEquals(0, exit, command.group() + "\n" + said.toString(StandardCharsets.UTF_8));
        }
        assertTrue(
                seen.containsAll(List.of(
                        "demo",
                        "check",
                        "ledger",
                        "supplies",
                        "packet",
                        "countersign",
                        "record",
                        "revise",
                        "compare",
                        "batch",
                        "identify")),
                seen.toString());
        for (String same : List.of("packet.pdf", "chart.pdf")) {
            assertEquals(
                    -1,
                    Files.mismatch(
                            folder.resolve("scratch/out/SM-04417/issue-3").resolve(same),
                            folder.resolve("scratch/again/SM-04417/issue-3").resolve(same)),
                    same);
        }
    }

    @Test
    void showsLinesThatStandInTheExamples() throws IOException {
        String example = Files.readString(Path.of("plans/patients/SM-04417-issue-2.yaml"));
        Matcher yaml = YAML.matcher(readme());
        assertTrue(yaml.find());
        for (String line : yaml.group(1).lines().toList()) {
            assertTrue(example.contains(line.strip()), line);
        }
    }

    @Test
    void printsTheFindingThatTheReadmeShows() throws IOException {
        Matcher shown = FINDING.matcher(readme());
        assertTrue(shown.find());
        Path plans = folder.resolve("plans");
        for (String name : List.of("clinic.yaml", "protocols/antagonist-fixed.yaml", "patients/SM-04417.yaml")) {
            Files.createDirectories(plans.resolve(name).getParent());
            Files.copy(Path.of("plans").resolve(name), plans.resolve(name));
        }
        MedicineFiles.copyTo(plans);
        Path plan = plans.resolve("patients/SM-04417.yaml");
        Files.writeString(plan, Files.readString(plan).replace("amount: 187.5", "amount: 190"));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertEquals(1, run(out, "check", plan.toString()));
        String place = plan + ":" + shown.group(2) + ":" + shown.group(3) + ": stop:";
        assertTrue(out.toString(StandardCharsets.UTF_8).contains(place), out.toString(StandardCharsets.UTF_8));
        assertTrue(out.toString(StandardCharsets.UTF_8).contains("[" + shown.group(4) + "]"));
    }

    @Test
    void namesFilesThatExist() throws IOException {
        for (String document : List.of("README.md", "DEVELOPERS.md")) {
            Matcher file = Pattern.compile("\\]\\(([^):]+)\\)|`((?:src|plans|templates)/[^`<>* ]+)`")
                    .matcher(Files.readString(Path.of(document)));
            while (file.find()) {
                String name = file.group(1) == null ? file.group(2) : file.group(1);
                assertTrue(Files.exists(Path.of(name)), document + " names " + name);
            }
        }
    }

    @Test
    void saysOneVersionEverywhere() throws IOException {
        assertTrue(Files.readString(Path.of("pom.xml")).contains("<version>" + Press.VERSION + "</version>"));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertEquals(0, run(out, "--version"));
        assertEquals("Cyclepacket " + Press.VERSION + "\n", out.toString(StandardCharsets.UTF_8));
    }

    @Test
    void keepsPlaceholdersOutOfTheDocuments() throws IOException {
        for (String document : List.of("README.md", "DEVELOPERS.md")) {
            assertFalse(Files.readString(Path.of(document)).contains("MEASURES"), document);
        }
    }
}

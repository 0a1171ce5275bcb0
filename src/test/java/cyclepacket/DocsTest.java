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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the two documents show is run: commands answer, files exist, lines of YAML stand in the examples. */
class DocsTest {
    private static final Pattern COMMAND =
            Pattern.compile("^    \\./cyclepacket (\\w+)(?: (plans/\\S+))?", Pattern.MULTILINE);
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
        return CommandLines.run(
                new Terminal(
                        new BufferedReader(new StringReader("")),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                        Clock.systemUTC(),
                        Path.of("").toAbsolutePath()),
                args);
    }

    @Test
    void runsEveryCommandOfTheReadme() throws IOException {
        List<String> seen = new ArrayList<>();
        Matcher command = COMMAND.matcher(readme());
        while (command.find()) {
            seen.add(command.group(1));
            assertEquals(0, run(command.group(1), "--help"), command.group());
            if (command.group(2) != null && !command.group(1).equals("packet")) {
                assertEquals(0, run(command.group(1), command.group(2)), command.group());
            }
        }
        assertTrue(seen.containsAll(List.of("demo", "check", "ledger", "packet", "countersign")), seen.toString());
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
        for (String name : List.of(
                "clinic.yaml",
                "medicines/fsh-pen.yaml",
                "medicines/antagonist-syringe.yaml",
                "medicines/trigger-syringe.yaml",
                "protocols/antagonist-fixed.yaml",
                "patients/SM-04417.yaml")) {
            Files.createDirectories(plans.resolve(name).getParent());
            Files.copy(Path.of("plans").resolve(name), plans.resolve(name));
        }
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

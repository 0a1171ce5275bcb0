package cyclepacket.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.packet.PrintedDemo;
import cyclepacket.packet.WordedHome;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command that a build runs over finished packets: its exit code is what stops the build. */
class WordingCommandTest {
    @TempDir
    Path folder;

    /** A command line run on a project's folder, with what it printed. */
    private record Said(int exit, String out) {
        static Said of(Path home, String... args) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            PrintStream both = new PrintStream(out, true, StandardCharsets.UTF_8);
            BufferedReader nothing = new BufferedReader(new StringReader(""));
            int exit = CommandLines.run(new Terminal(nothing, both, both, Clock.systemUTC(), home), args);
            return new Said(exit, out.toString(StandardCharsets.UTF_8));
        }
    }

    /** What the command says of the demo's packet, with a sentence planted where every packet has a list. */
    private Said planted(String language, String sentence) throws IOException {
        WordedHome home = new WordedHome(folder.resolve("home"));
        String key = "keeping.how.2";
        Path file = home.wording(language).resolve("keeping.properties");
        String text = Files.readString(file);
        Files.writeString(file, text.replaceFirst("(?m)^" + key + " = (.*)$", key + " = $1 " + sentence));
        Path plan = home.plan("SM-04417", "copy", WordedHome.inLanguage(language));
        Path out = folder.resolve("out");
        assertTrue(home.print(plan, out).written().isPresent());
        return Said.of(
                home.path(),
                "wording",
                "--pdf",
                out.resolve("SM-04417/issue-1/packet.pdf").toString());
    }

    @Test
    void endsWellOnThePacketAsItIs() throws IOException {
        Path packet = folder.resolve("packet.pdf");
        Files.write(packet, PrintedDemo.of("SM-04417").pdf());
        Said said = Said.of(Path.of("").toAbsolutePath(), "wording", "--pdf", packet.toString());
        assertEquals(ExitCode.DONE, said.exit(), said.out());
    }

    @Test
    void stopsTheBuildForOneBadForm() throws IOException {
        Said said = planted("en", "Do not take 10U more.");
        assertEquals(ExitCode.STOPPED, said.exit(), said.out());
        assertTrue(said.out().contains("\"10U\" is an error-prone form (unit-U)"), said.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en|Institutional recommendations accompany individualized administration. |200|"
                        + "Flesch-Kincaid grade|WORDING-GRADE",
                "en|The box is opened. |200|sentences are passive|WORDING-PASSIVE-SHARE",
                "es|Institucionalmente recomendaciones individualizadas complementarias administrativas. |90|"
                        + "INFLESZ|WORDING-GRADE"
            })
    void stopsTheBuildForWordsThatAreHardAsAWhole(
            String language, String sentence, int times, String words, String code) throws IOException {
        Said said = planted(language, (sentence + " ").repeat(times));
        assertEquals(ExitCode.STOPPED, said.exit(), said.out());
        assertTrue(
                said.out()
                        .lines()
                        .anyMatch(line -> line.contains("stop: ") && line.contains(words) && line.contains(code)),
                said.out());
        assertEquals(
                1, said.out().lines().filter(line -> line.contains("stop: ")).count(), said.out());
    }

    @Test
    void stopsTheBuildForABadTextInTheFolder() throws IOException {
        WordedHome home = new WordedHome(folder.resolve("home"));
        home.edit(
                "templates/wording/en/log.properties", text -> text.replaceFirst("(?m)^(log.title = .*)$", "$1 .5 mg"));
        Said said = Said.of(home.path(), "wording", "en");
        assertEquals(ExitCode.STOPPED, said.exit(), said.out());
        assertTrue(said.out().contains("templates/wording/en/log.properties:"), said.out());
    }
}

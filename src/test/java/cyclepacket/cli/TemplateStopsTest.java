package cyclepacket.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A template of the clinic that misbehaves ends {@code packet} with 1, its place and nothing written. */
class TemplateStopsTest {
    @TempDir
    static Path home;

    @BeforeAll
    static void copyTemplatesAndPlans() throws IOException {
        for (String part : List.of("templates", "plans")) {
            List<Path> files;
            try (Stream<Path> all = Files.walk(Path.of(part))) {
                files = all.filter(Files::isRegularFile).toList();
            }
            for (Path file : files) {
                Files.createDirectories(home.resolve(file).getParent());
                Files.copy(file, home.resolve(file));
            }
        }
    }

    private static TypedRun packet() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Clock clock = Clock.fixed(Instant.parse("2027-03-04T15:00:00Z"), ZoneOffset.UTC);
        Terminal terminal = new Terminal(
                new BufferedReader(new StringReader("")),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                clock,
                home);
        String[] typed = {"packet", plan(), "--out", home.resolve("out").toString()};
        int exit = CommandLines.run(terminal, typed);
        return new TypedRun(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private static String plan() {
        return home.resolve("plans/patients/SM-04417.yaml").toString();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '\u00a6',
            value = {
                "parts/door.ftlh \u00a6 ${v.noSuch} \u00a6 templates/parts/door.ftlh:1:3: stop: this template cannot"
                        + " be filled",
                "chart/trail.ftlh \u00a6 <#include '../../pom.xml'> \u00a6 templates/chart/trail.ftlh:1:1: stop: this"
                        + " template",
                "parts/card.ftlh \u00a6 <#list 1.. as n>no end</#list> \u00a6 templates/parts/card.ftlh:1:17: stop:"
                        + " this template writes more",
                "parts/log.ftlh \u00a6 <#macro m><@m/></#macro><@m/> \u00a6 templates/parts/log.ftlh:1:1: stop: this"
                        + " template calls itself",
                "style/packet.css \u00a6 p { background-image: url(http://127.0.0.1:9/a.png) } \u00a6 RESOURCE-REFUSED",
                "style/chart.css \u00a6 div { background-image: url('file:///etc/hostname') } \u00a6 RESOURCE-REFUSED",
                "style/packet.css \u00a6 #door { height: 100000in } \u00a6 templates: stop: the page fills 10",
                "style/base.css \u00a6 @page { margin: 6in } \u00a6 LAYOUT-TROUBLE",
                "parts/start.ftlh \u00a6 <img src='file:///etc/hostname' alt='a'/> \u00a6 RESOURCE-REFUSED",
                "parts/days.ftlh \u00a6 <script>0</script> \u00a6 RESOURCE-REFUSED",
                "parts/supply.ftlh \u00a6 <p>&nbsp;</p> \u00a6 XHTML-BROKEN"
            })
    void stopsWithPlaceAndWritesNothing(String file, String added, String told) throws IOException {
        Path template = home.resolve("templates").resolve(file);
        byte[] whole = Files.readAllBytes(template);
        try {
            Files.writeString(template, added + new String(whole, StandardCharsets.UTF_8));
            TypedRun run = packet();
            assertEquals(ExitCode.STOPPED, run.exit(), run.err());
            assertTrue(run.err().contains(told), run.err());
            assertFalse(run.err().contains("\tat "), run.err());
            assertFalse(Files.exists(home.resolve("out")));
        } finally {
            Files.write(template, whole);
        }
    }

    /** In a process of its own, which may lose its memory without taking other tests along. */
    @Test
    void stopsTemplateThatEatsAllMemory() throws IOException, InterruptedException {
        Path template = home.resolve("templates/parts/door.ftlh");
        byte[] whole = Files.readAllBytes(template);
        Path log = home.resolve("memory.log");
        try {
            Files.writeString(
                    template,
                    "<#assign s = 'grow'><#list 1..40 as n>\n<#assign s = s + s></#list>"
                            + new String(whole, StandardCharsets.UTF_8));
            Process run = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:+UseSerialGC",
                            "-XX:TieredStopAtLevel=1",
                            "-Xmx192m",
                            "-Djava.awt.headless=true",
                            "-Dcyclepacket.home=" + home,
                            "-cp",
                            System.getProperty("java.class.path"),
                            "cyclepacket.cli.Main",
                            "packet",
                            plan(),
                            "--out",
                            home.resolve("out").toString())
                    .redirectErrorStream(true)
                    .redirectOutput(log.toFile())
                    .start();
            assertTrue(run.waitFor(120, TimeUnit.SECONDS));
            String told = Files.readString(log);
            assertEquals(ExitCode.STOPPED, run.exitValue(), told);
            assertTrue(told.contains("templates/parts/door.ftlh:1:21: stop: this template needs more memory"), told);
            assertFalse(Files.exists(home.resolve("out")));
        } finally {
            Files.write(template, whole);
        }
    }
}

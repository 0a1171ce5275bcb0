package cyclepacket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Runs the launcher in a small project of its own, with a stand-in Java and a stand-in Maven that note their calls. */
class LauncherTest {
    private static final Path PLACE = Path.of("target", "launcher test").toAbsolutePath();
    private final Path project = PLACE.resolve("project");
    private final Path java = PLACE.resolve("java");
    private final Path tools = PLACE.resolve("tools");
    private final Path calls = PLACE.resolve("builds");

    @BeforeEach
    void layOut() throws IOException {
        deleteAll(PLACE);
        Files.createDirectories(project.resolve("src/main"));
        Files.copy(Path.of("cyclepacket"), project.resolve("cyclepacket"), StandardCopyOption.COPY_ATTRIBUTES);
        Files.writeString(project.resolve("pom.xml"), "<project/>");
        Files.writeString(project.resolve("src/main/A.java"), "class A {}");
        script(java.resolve("bin/java"), "for word in \"$@\"; do echo \"<$word>\"; done; pwd; umask; exit 7");
        script(java.resolve("bin/javac"), "exit 0");
        Files.writeString(java.resolve("release"), "JAVA_VERSION=\"17.0.9\"\n");
        script(
                tools.resolve("mvn"),
                "echo \"$@\" >>'" + calls
                        + "'; sleep 0.3; echo noise; mkdir -p target; echo jar >target/cyclepacket.jar");
        Files.createDirectories(PLACE.resolve("elsewhere"));
    }

    @Test
    void buildsOnceAndPassesWordsFolderAndExitCode() throws IOException, InterruptedException {
        Result first = run("check", "my plan.yaml", "--json");
        assertEquals(7, first.exitCode);
        assertEquals(List.of("Building once, about a minute ..."), first.errors);
        int tail = first.output.size() - 5;
        assertEquals(
                List.of(
                        "<check>",
                        "<my plan.yaml>",
                        "<--json>",
                        PLACE.resolve("elsewhere").toString(),
                        "0077"),
                first.output.subList(tail, tail + 5));
        assertTrue(first.output.contains("<-Dcyclepacket.home=" + project + ">"), first.output.toString());
        Result second = run("check", "my plan.yaml", "--json");
        assertEquals(List.of(), second.errors);
        assertEquals(first.output, second.output);
        assertEquals(List.of("-B -q -DskipTests package"), Files.readAllLines(calls));
    }

    @Test
    void buildsAgainWhenASourceChanged() throws IOException, InterruptedException {
        run("demo");
        Files.writeString(project.resolve("src/main/A.java"), "class A { }");
        run("demo");
        assertEquals(2, Files.readAllLines(calls).size());
        Files.writeString(project.resolve("pom.xml"), "<project></project>");
        run("demo");
        assertEquals(3, Files.readAllLines(calls).size());
    }

    /** Reading all sources costs each start some 50 ms: once they were read, a glance at their last change is enough. */
    @Test
    void readsTheSourcesOnlyWhenAGlanceShowsAChange() throws IOException, InterruptedException {
        Path reads = PLACE.resolve("reads");
        script(tools.resolve("sha256sum"), "echo read >>'" + reads + "'; exec /usr/bin/sha256sum \"$@\"");
        run("demo");
        run("demo");
        long read = Files.readAllLines(reads).size();
        run("demo");
        assertEquals(read, Files.readAllLines(reads).size());
        Path source = project.resolve("src/main/A.java");
        FileTime before = Files.getLastModifiedTime(source);
        Files.writeString(source, "class B {}");
        Files.setLastModifiedTime(source, before);
        run("demo");
        assertEquals(2, Files.readAllLines(calls).size(), "same length, same date, and still another source");
    }

    @Test
    void startsFromTheFolderThatItIsIn() throws IOException, InterruptedException {
        Process process = builder(List.of("sh", "cyclepacket", "demo"))
                .directory(project.toFile())
                .start();
        assertTrue(process.waitFor(30, TimeUnit.SECONDS));
        assertEquals(7, process.exitValue());
    }

    @Test
    void buildsOnceWhenStartedTwiceAtTheSameMoment() throws IOException, InterruptedException {
        Process other = start("demo");
        Result result = run("demo");
        assertTrue(other.waitFor(30, TimeUnit.SECONDS));
        assertEquals(7, other.exitValue());
        assertEquals(7, result.exitCode);
        assertEquals(1, Files.readAllLines(calls).size());
    }

    /** An unpacked release has a jar and no sources: neither Maven nor a compiler is there, and neither is asked for. */
    @Test
    void startsAReleaseWithoutABuild() throws IOException, InterruptedException {
        Files.delete(project.resolve("pom.xml"));
        Files.delete(java.resolve("bin/javac"));
        Files.delete(tools.resolve("mvn"));
        Result missing = run("check", "plan.yaml");
        assertEquals(3, missing.exitCode);
        assertTrue(missing.errors.get(0).endsWith("unpack the release again."), missing.errors.toString());
        Files.createDirectories(project.resolve("program"));
        Files.writeString(project.resolve("program/cyclepacket.jar"), "jar");
        Result started = run("check", "plan.yaml");
        assertEquals(7, started.exitCode);
        assertEquals(List.of(), started.errors);
        assertTrue(
                started.output.contains("<" + project.resolve("program/cyclepacket.jar") + ">"),
                started.output.toString());
    }

    /** Seen with OpenJDK 17.0.15: a fault of its own over one list of classes, at every try. */
    @Test
    void makesItsArchiveTheShortWayWhenJavaBreaksDownOverTheLong() throws IOException, InterruptedException {
        script(
                java.resolve("bin/java"),
                "for word in \"$@\"; do case $word in -Xshare:dump) exit 134 ;;"
                        + " -XX:ArchiveClassesAtExit=*) echo made >\"${word#*=}\"; exit 0 ;; esac; done; exit 7");
        assertEquals(7, run("demo").exitCode);
        assertEquals("made\n", Files.readString(project.resolve("target/launcher/archive.jsa")));
    }

    @Test
    void startsThroughALink() throws IOException, InterruptedException {
        Path link = PLACE.resolve("elsewhere/link");
        Files.createSymbolicLink(link, project.resolve("cyclepacket"));
        Process process = builder(List.of("./link", "demo")).start();
        assertTrue(process.waitFor(30, TimeUnit.SECONDS));
        assertEquals(7, process.exitValue());
    }

    @Test
    void showsTheEndOfALogWhenTheBuildFails() throws IOException, InterruptedException {
        script(tools.resolve("mvn"), "echo the reason; exit 1");
        Result result = run("demo");
        assertEquals(3, result.exitCode);
        assertEquals(List.of(), result.output);
        assertTrue(result.errors.contains("the reason"), result.errors.toString());
    }

    @Test
    void namesThePackagesWhenJavaIsTooOld() throws IOException, InterruptedException {
        Files.writeString(java.resolve("release"), "JAVA_VERSION=\"11.0.2\"\n");
        Result result = run("demo");
        assertEquals(3, result.exitCode);
        assertEquals("On Debian:  sudo apt-get install openjdk-17-jdk-headless maven", result.errors.get(1));
    }

    @Test
    void namesThePackagesWhenABuildNeedsACompilerThatIsMissing() throws IOException, InterruptedException {
        Files.delete(java.resolve("bin/javac"));
        Result result = run("demo");
        assertEquals(3, result.exitCode);
        assertEquals("On Debian:  sudo apt-get install openjdk-17-jdk-headless maven", result.errors.get(1));
    }

    private Result run(String... words) throws IOException, InterruptedException {
        Process process = start(words);
        List<String> output = process.inputReader().lines().toList();
        List<String> errors = process.errorReader().lines().toList();
        assertTrue(process.waitFor(30, TimeUnit.SECONDS));
        return new Result(process.exitValue(), output, errors);
    }

    private Process start(String... words) throws IOException {
        List<String> command =
                new ArrayList<>(List.of(project.resolve("cyclepacket").toString()));
        command.addAll(List.of(words));
        return builder(command).start();
    }

    private ProcessBuilder builder(List<String> command) {
        ProcessBuilder builder =
                new ProcessBuilder(command).directory(PLACE.resolve("elsewhere").toFile());
        Map<String, String> environment = builder.environment();
        environment.put("JAVA_HOME", java.toString());
        environment.put("PATH", tools + ":" + environment.get("PATH"));
        return builder;
    }

    private static void script(Path file, String body) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, "#!/bin/sh\n" + body + "\n");
        assertTrue(file.toFile().setExecutable(true));
    }

    private static void deleteAll(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (var files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    /** What a run printed, line by line. */
    private record Result(int exitCode, List<String> output, List<String> errors) {}
}

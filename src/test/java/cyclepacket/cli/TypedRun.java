package cyclepacket.cli;

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
import java.util.stream.Stream;

/** One command line run in this process, with what it printed. */
record TypedRun(int exit, String out, String err) {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2027-03-04T15:00:00Z"), ZoneOffset.UTC);

    static TypedRun of(String... args) {
        return answering("", args);
    }

    static TypedRun answering(String answers, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = CommandLines.run(
                new Terminal(
                        new BufferedReader(new StringReader(answers)),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        CLOCK,
                        Path.of("").toAbsolutePath()),
                args);
        return new TypedRun(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** A copy of the demo's files, with the first patient's plans alone, in a folder of its own, to be edited by one test. */
    static Path copyOfPlans(Path into) throws IOException {
        Path from = Path.of("plans");
        List<Path> files;
        try (Stream<Path> all = Files.walk(from)) {
            files = all.filter(Files::isRegularFile)
                    .filter(file -> !file.getParent().endsWith("patients")
                            || file.getFileName().toString().startsWith("SM-04417"))
                    .toList();
        }
        for (Path file : files) {
            Path target = into.resolve("plans").resolve(from.relativize(file).toString());
            Files.createDirectories(target.getParent());
            Files.copy(file, target);
        }
        return into.resolve("plans/patients");
    }

    static List<Path> filesBelow(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }
}

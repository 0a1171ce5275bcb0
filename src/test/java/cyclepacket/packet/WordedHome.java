package cyclepacket.packet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** A copy of templates and plans whose words a test may change, and the packets printed from it. */
public final class WordedHome {
    private final Path home;

    public WordedHome(Path home) throws IOException {
        this.home = home;
        for (String folder : List.of("templates", "plans")) {
            copy(Path.of(folder), home.resolve(folder));
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(from)) {
            files = all.filter(Files::isRegularFile).toList();
        }
        for (Path file : files) {
            Path target = to.resolve(from.relativize(file).toString());
            Files.createDirectories(target.getParent());
            Files.copy(file, target);
        }
    }

    public Path path() {
        return home;
    }

    public Path wording(String language) {
        return home.resolve("templates/wording").resolve(language);
    }

    /** A folder of an earlier run, and all that is in it. */
    static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            List<Path> all;
            try (Stream<Path> below = Files.walk(folder)) {
                all = below.sorted(Comparator.reverseOrder()).toList();
            }
            for (Path each : all) {
                Files.delete(each);
            }
        }
    }

    /** Changes a file; a change that changes nothing is a mistake of the test. */
    public void edit(String file, UnaryOperator<String> change) throws IOException {
        Path path = home.resolve(file);
        String before = Files.readString(path);
        String after = change.apply(before);
        if (after.equals(before)) {
            throw new AssertionError(file + " was not changed");
        }
        Files.writeString(path, after);
    }

    /** A plan of the demo with a line or two of it changed, under a name of its own. */
    public Path plan(String from, String to, UnaryOperator<String> change) throws IOException {
        Path plan = home.resolve("plans/patients/" + to + ".yaml");
        Files.writeString(plan, change.apply(Files.readString(home.resolve("plans/patients/" + from + ".yaml"))));
        return plan;
    }

    public Outcome print(Path plan, Path out) throws IOException {
        try (Press press = new Press(home)) {
            return press.print(plan, out, false, Instant.EPOCH);
        }
    }

    public static UnaryOperator<String> inLanguage(String language) {
        return text -> text.replace("\nlanguage: en\n", "\nlanguage: " + language + "\n");
    }
}

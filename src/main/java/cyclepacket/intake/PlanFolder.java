package cyclepacket.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Where a plan's companions lie: in the folder above its own. */
final class PlanFolder {
    private static final String ENDING = ".yaml";

    private final Path planFile;
    private final Path above;

    PlanFolder(Path planFile) {
        this.planFile = planFile;
        Path own = planFile.getParent() == null ? Path.of("") : planFile.getParent();
        this.above = own.resolve("..").normalize();
    }

    Path plan() {
        return planFile;
    }

    Path clinic() {
        return above.resolve("clinic" + ENDING);
    }

    Path protocol(String id) {
        return protocols().resolve(id + ENDING);
    }

    Path medicine(String id) {
        return medicines().resolve(id + ENDING);
    }

    Path protocols() {
        return above.resolve("protocols");
    }

    Path medicines() {
        return above.resolve("medicines");
    }

    /** The names of the files in a folder, without their ending; none when there is no such folder. */
    static TreeSet<String> names(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return new TreeSet<>();
        }
        try (Stream<Path> files = Files.list(folder)) {
            TreeSet<String> names = new TreeSet<>();
            files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(ENDING))
                    .forEach(name -> names.add(name.substring(0, name.length() - ENDING.length())));
            return names;
        }
    }

    /** The path as findings show it, with forward slashes on every machine. */
    static String shown(Path file) {
        return file.toString().replace('\\', '/');
    }

    /** The file's bytes, cut off just above the largest size that is accepted. */
    static byte[] bytes(Path file) throws IOException {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw new IOException(shown(file) + " is not a file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(Sheet.LARGEST_FILE + 1);
        }
    }
}

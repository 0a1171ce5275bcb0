package cyclepacket;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The demo's medicine files; its clinic file names every one of them. */
public final class MedicineFiles {
    private MedicineFiles() {}

    /** Copies them into {@code plans/medicines}. */
    public static void copyTo(Path plans) throws IOException {
        Path medicines = Files.createDirectories(plans.resolve("medicines"));
        List<Path> files;
        try (Stream<Path> all = Files.list(Path.of("plans/medicines"))) {
            files = all.toList();
        }
        for (Path file : files) {
            Files.copy(file, medicines.resolve(file.getFileName().toString()));
        }
    }
}

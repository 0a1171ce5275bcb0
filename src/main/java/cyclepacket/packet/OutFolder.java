package cyclepacket.packet;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The folder of one issue. Everything is written beside it first and moved into place last, so that a reader never meets
 * half a packet; only the owner can read it.
 */
final class OutFolder {
    private static final String BESIDE = ".making-";
    private static final String OLD = ".replaced-";

    private final Path target;

    OutFolder(Path out, String plan, int issue) {
        this.target = out.resolve(plan).resolve("issue-" + issue);
    }

    Path path() {
        return target;
    }

    /** Whether a packet of an earlier run lies here. */
    boolean holdsEarlierPacket() {
        return Files.exists(target.resolve("packet.pdf"));
    }

    /** Writes all files or none. */
    void write(Map<String, byte[]> files) throws IOException {
        Path parent = target.getParent();
        Files.createDirectories(parent, ownerOnly(parent, "rwx------"));
        Path making = Files.createTempDirectory(parent, BESIDE);
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path path = Files.createFile(making.resolve(file.getKey()), ownerOnly(parent, "rw-------"));
                Files.write(path, file.getValue());
            }
            moveIntoPlace(making);
        } finally {
            delete(making);
        }
    }

    private void moveIntoPlace(Path making) throws IOException {
        if (!Files.exists(target)) {
            Files.move(making, target, StandardCopyOption.ATOMIC_MOVE);
            return;
        }
        Path old = Files.createTempDirectory(target.getParent(), OLD);
        Path aside = old.resolve(target.getFileName());
        Files.move(target, aside, StandardCopyOption.ATOMIC_MOVE);
        try {
            Files.move(making, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (FileSystemException blocked) {
            Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE);
            throw blocked;
        } finally {
            delete(old);
        }
    }

    private static FileAttribute<?>[] ownerOnly(Path where, String rights) {
        boolean posix = where.getFileSystem().supportedFileAttributeViews().contains("posix");
        return posix
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))}
                : new FileAttribute<?>[0];
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}

package cyclepacket.packet;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.stream.Stream;

/** Files that are on the disk when a call returns, and that only their owner can read. */
final class Durable {
    private Durable() {}

    /** Writes a new file and waits until it is on the disk. */
    static void write(Path file, byte[] bytes) throws IOException {
        Files.createFile(file, ownerOnly(file, "rw-------"));
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }

    /** Moves a file or folder into place in one step that a crash cannot divide. */
    static void move(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        sync(to.toAbsolutePath().getParent());
    }

    static void createFolders(Path folder) throws IOException {
        Files.createDirectories(folder, ownerOnly(folder, "rwx------"));
    }

    /** A folder's own list of names; some systems cannot do that and need not. */
    private static void sync(Path folder) throws IOException {
        if (isPosix(folder)) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }

    static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    private static boolean isPosix(Path where) {
        return where.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    private static FileAttribute<?>[] ownerOnly(Path where, String rights) {
        return isPosix(where)
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))}
                : new FileAttribute<?>[0];
    }
}

package cyclepacket.packet;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
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
        this(out.resolve(plan).resolve("issue-" + issue));
    }

    OutFolder(Path target) {
        this.target = target;
    }

    Path path() {
        return target;
    }

    /** Whether a packet of an earlier run lies here. */
    boolean holdsEarlierPacket() {
        return Files.exists(target.resolve("packet.pdf"));
    }

    /** Whether exactly these files lie here already. */
    boolean holds(Map<String, byte[]> files) throws IOException {
        if (!Files.isDirectory(target)) {
            return false;
        }
        try (Stream<Path> all = Files.list(target)) {
            if (all.count() != files.size()) {
                return false;
            }
        }
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = target.resolve(file.getKey());
            if (!Files.exists(path) || !Arrays.equals(Files.readAllBytes(path), file.getValue())) {
                return false;
            }
        }
        return true;
    }

    /** Writes all files or none; a name may lead into a folder of its own. */
    void write(Map<String, byte[]> files) throws IOException {
        write(files, Map.of());
    }

    /** @param others files that lie on the disk already, by the name they get here */
    void write(Map<String, byte[]> files, Map<String, Path> others) throws IOException {
        Path parent = target.getParent();
        Durable.createFolders(parent);
        Path making = Files.createTempDirectory(parent, BESIDE);
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path path = making.resolve(file.getKey());
                Durable.createFolders(path.getParent());
                Durable.write(path, file.getValue());
            }
            for (Map.Entry<String, Path> other : others.entrySet()) {
                Durable.write(making.resolve(other.getKey()), Files.readAllBytes(other.getValue()));
            }
            moveIntoPlace(making);
        } finally {
            Durable.delete(making);
        }
    }

    private void moveIntoPlace(Path making) throws IOException {
        if (!Files.exists(target)) {
            Durable.move(making, target);
            return;
        }
        Path old = Files.createTempDirectory(target.getParent(), OLD);
        Path aside = old.resolve(target.getFileName());
        Durable.move(target, aside);
        try {
            Durable.move(making, target);
        } catch (FileSystemException blocked) {
            Durable.move(aside, target);
            throw blocked;
        } finally {
            Durable.delete(old);
        }
    }

    /**
     * Puts right what a killed run left: a folder that was moved aside goes back, what was half made goes away. Only for
     * who holds the folder's lock.
     */
    static void tidy(Path parent) throws IOException {
        try (Stream<Path> all = Files.list(parent)) {
            for (Path left : all.toList()) {
                String name = left.getFileName().toString();
                if (name.startsWith(OLD)) {
                    putBack(left);
                }
                if (name.startsWith(OLD) || name.startsWith(BESIDE)) {
                    Durable.delete(left);
                }
            }
        }
    }

    private static void putBack(Path old) throws IOException {
        try (Stream<Path> all = Files.list(old)) {
            for (Path aside : all.toList()) {
                Path place = old.resolveSibling(aside.getFileName());
                if (!Files.exists(place)) {
                    Durable.move(aside, place);
                }
            }
        }
    }
}

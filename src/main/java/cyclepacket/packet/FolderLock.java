package cyclepacket.packet;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;

/** One at a time in one folder, between programs and between the threads of this one. */
final class FolderLock {
    /** Never deleted: who waits for a lock file that is gone holds nothing. */
    static final String FILE = ".lock";

    private static final Map<Path, ReentrantLock> TURNS = new ConcurrentHashMap<>();

    private FolderLock() {}

    /** What is done while the folder is held. */
    @FunctionalInterface
    interface Work<T> {
        T done() throws IOException;
    }

    /** Waits for its turn, works and lets go; the folder must exist. */
    static <T> T holding(Path folder, Work<T> work) throws IOException {
        ReentrantLock turn = TURNS.computeIfAbsent(folder.toRealPath(), path -> new ReentrantLock());
        turn.lock();
        try (FileChannel channel =
                        FileChannel.open(folder.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock lock = channel.lock()) {
            if (!lock.isValid()) {
                throw new IOException("the lock of " + folder + " was lost");
            }
            return work.done();
        } finally {
            turn.unlock();
        }
    }
}

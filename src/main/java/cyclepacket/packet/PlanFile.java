package cyclepacket.packet;

import cyclepacket.intake.PlanEdit;
import cyclepacket.quantity.Refusal;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Changes a plan on the disk: whole or not at all, and only if it still holds what was read. */
final class PlanFile {
    /** A file lock holds between programs only; within this one the threads take turns. */
    private static final ReentrantLock TURN = new ReentrantLock();

    private PlanFile() {}

    /**
     * The text with one edit.
     *
     * @throws Unclear when the text has no place for it
     */
    static byte[] edited(byte[] plan, UnaryOperator<PlanEdit> edit) {
        try {
            return edit.apply(PlanEdit.of(plan)).bytes();
        } catch (Refusal refused) {
            throw new Unclear(refused.getMessage() + "; " + refused.mend() + ". Nothing was written.");
        }
    }

    /** @throws ChangedMeanwhile when the file no longer holds {@code before} */
    static void replace(Path plan, byte[] before, byte[] after) throws IOException {
        Path real = plan.toRealPath();
        TURN.lock();
        try (FileChannel own = FileChannel.open(real, StandardOpenOption.WRITE);
                FileLock lock = own.lock()) {
            // Another program may have moved a new file into place while this one waited for the old one.
            if (!lock.isValid() || !Arrays.equals(Files.readAllBytes(real), before)) {
                throw new ChangedMeanwhile(plan);
            }
            moveIntoPlace(real, after);
        } finally {
            TURN.unlock();
        }
    }

    private static void moveIntoPlace(Path real, byte[] after) throws IOException {
        // No plan by its name: a killed run may leave it, and a print run would take it for a later issue.
        String name = ".changing-" + real.getFileName() + "-";
        deleteLeft(real.getParent(), name);
        Path beside = Files.createTempFile(real.getParent(), name, ".tmp");
        try {
            try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
                ByteBuffer left = ByteBuffer.wrap(after);
                while (left.hasRemaining()) {
                    // A disk that fills up takes a part first, and says so only when it is asked again.
                    channel.write(left);
                }
                channel.force(true);
            }
            copyRights(real, beside);
            Files.move(beside, real, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** What a run wrote for this plan before it was killed; whoever holds the plan's lock is alone with it. */
    private static void deleteLeft(Path folder, String name) throws IOException {
        List<Path> left;
        try (Stream<Path> files = Files.list(folder)) {
            left = files.filter(file -> file.getFileName().toString().startsWith(name))
                    .toList();
        }
        for (Path file : left) {
            Files.deleteIfExists(file);
        }
    }

    private static void copyRights(Path from, Path to) throws IOException {
        PosixFileAttributeView view =
                Files.getFileAttributeView(from, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        if (view != null) {
            Files.setPosixFilePermissions(to, view.readAttributes().permissions());
        }
    }
}

package cyclepacket.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Commands that lose their disk, their right to write or their life. {@code -Dkills=200} tries every command with each
 * fault and kills each that often; without it every command meets one fault.
 */
class FaultsTest {
    private static final int KILLS = Integer.getInteger("kills", 1);
    private static final boolean ALL = KILLS > 1;
    /** Longer than a command writes on a quiet machine, in milliseconds. */
    private static final int WRITING = 60;

    /** Where a command that prints puts its packet. */
    private static final String ISSUE = "out/SM-04417/issue-3";

    @TempDir
    Path folder;

    private final Random moments = new Random(20270313);

    static Stream<Chore> starved() {
        return ALL
                ? Stream.of(Chore.PACKET, Chore.RECORD, Chore.REVISE, Chore.COUNTERSIGN)
                : Stream.of(Chore.PACKET, Chore.RECORD);
    }

    static Stream<Chore> killed() {
        return ALL
                ? Stream.of(Chore.PACKET, Chore.RECORD, Chore.REVISE, Chore.COUNTERSIGN)
                : Stream.of(Chore.REVISE, Chore.COUNTERSIGN);
    }

    /** A file may grow to one block only: to the program it is as if the disk were full in the middle of a file. */
    @ParameterizedTest
    @MethodSource("starved")
    void leaveEverythingAsItWasWhenTheDiskIsFull(Chore chore) throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "NOT CHECKED: no shell to set the limit");
        chore.lay(folder);
        Map<String, String> before = Chore.files(folder);
        Process run = chore.elsewhere(folder, List.of("/bin/sh", "-c", "ulimit -f 1 && exec \"$@\"", "sh"));
        String told = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(run.waitFor(120, TimeUnit.SECONDS));
        assertEquals(ExitCode.USAGE, run.exitValue(), told);
        assertTrue(told.contains("A file could not be read or written: File too large"), told);
        assertEquals(before, Chore.files(folder));
        assertFalse(Files.exists(folder.resolve("out/SM-04417/issue-3")));
    }

    /** The last file of all is the register; a packet that it does not know must not lie there. */
    @Test
    void takeAPacketBackThatTheRegisterHasNoRoomFor() throws IOException, InterruptedException {
        assumeTrue(ALL, "only with -Dkills");
        Chore.PACKET.lay(folder);
        assertEquals(ExitCode.DONE, Chore.PACKET.here(folder).exit());
        Path register = folder.resolve("out/SM-04417/register.json");
        String own = Files.readString(register).replace("\"final\"", "\"draft\"");
        int start = own.indexOf('[') + 1;
        int end = own.lastIndexOf("]}");
        String lines = String.join(",", Collections.nCopies(4_000, own.substring(start, end)));
        Files.writeString(register, own.substring(0, start) + lines + own.substring(end));
        String before = Files.readString(register);
        Files.writeString(Chore.PACKET.file(folder), "# one more line\n" + Files.readString(Chore.PACKET.file(folder)));
        Process run = Chore.PACKET.elsewhere(folder, List.of("/bin/sh", "-c", "ulimit -f 1600 && exec \"$@\"", "sh"));
        String told = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(ExitCode.USAGE, run.waitFor(), told);
        assertFalse(Files.exists(folder.resolve("out/SM-04417/issue-3")), told);
        assertEquals(before, Files.readString(register));
    }

    /** Each plan is as it was or as it was to become, each packet is whole or not there, and the same command mends the rest. */
    @ParameterizedTest
    @MethodSource("killed")
    void leaveNothingHalfDoneWhenKilled(Chore chore) throws IOException, InterruptedException {
        Path whole = folder.resolve("whole");
        chore.lay(whole);
        String unchanged = Files.readString(chore.file(whole));
        long longest = millisOf(chore, whole);
        Map<String, String> files = Chore.files(whole);
        Map<String, String> printed = Chore.files(whole.resolve(ISSUE));
        String changed = Files.readString(chore.file(whole));
        Map<String, Integer> met = new TreeMap<>();
        for (int kill = 0; kill < KILLS; kill++) {
            Path own = folder.resolve("kill-" + kill);
            chore.lay(own);
            int before = count(own);
            Process run = chore.elsewhere(own, List.of());
            boolean isDone = kill % 2 == 0
                    ? run.waitFor(moments.nextLong(longest), TimeUnit.MILLISECONDS)
                    : isDoneAfterFirstSign(run, own, before);
            if (!isDone) {
                run.destroyForcibly().waitFor();
            }
            String now = Files.readString(chore.file(own));
            Map<String, String> left = Chore.files(own.resolve(ISSUE));
            assertTrue(now.equals(unchanged) || now.equals(changed), "kill " + kill + " left half a plan");
            assertTrue(left.isEmpty() || left.equals(printed), "kill " + kill + " left half a packet");
            boolean isWritten = printed.isEmpty() ? now.equals(changed) : !left.isEmpty();
            met.merge((isDone ? "too late, " : "killed, ") + (isWritten ? "written" : "not written"), 1, Integer::sum);
            if (!isWritten) {
                TypedRun again = chore.here(own);
                assertEquals(ExitCode.DONE, again.exit(), again.err());
                assertEquals(changed, Files.readString(chore.file(own)));
                assertEquals(printed, Chore.files(own.resolve(ISSUE)));
                assertEquals(files.keySet(), Chore.files(own).keySet(), "kill " + kill);
            }
        }
        Files.writeString(Path.of("target", "killed-" + chore.name() + ".txt"), KILLS + " moments: " + met + "\n");
    }

    /** Most of a run is reading: every second kill waits for the first file that appears, and then up to {@value #WRITING} ms. */
    private boolean isDoneAfterFirstSign(Process run, Path folder, int files) throws InterruptedException {
        while (run.isAlive() && count(folder) == files) {
            run.waitFor(1, TimeUnit.MILLISECONDS);
        }
        return run.waitFor(moments.nextLong(WRITING), TimeUnit.MILLISECONDS);
    }

    private static int count(Path folder) {
        int count = 0;
        for (String place : List.of("plans/patients", "out", "out/SM-04417")) {
            String[] names = folder.resolve(place).toFile().list();
            count += names == null ? 0 : names.length;
        }
        return count;
    }

    /** How long the command takes when it is left alone: a kill comes before that. */
    private static long millisOf(Chore chore, Path folder) throws IOException, InterruptedException {
        long began = System.nanoTime();
        Process run = chore.elsewhere(folder, List.of());
        String told = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(ExitCode.DONE, run.waitFor(), told);
        return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - began);
    }

    @Test
    void saySoWhenNothingMayBeWritten() throws IOException {
        Chore.PACKET.lay(folder);
        Files.writeString(folder.resolve("out"), "a file, where a folder is wanted");
        Map<String, String> before = Chore.files(folder);
        TypedRun run = Chore.PACKET.here(folder);
        assertEquals(ExitCode.USAGE, run.exit(), run.err());
        assertTrue(run.err().contains("could not be read or written"), run.err());
        assertEquals(before, Chore.files(folder));
    }

    /** The owner's rights stop everybody but root, whom only the flag of the file system stops. */
    @Test
    void leaveThePlanOfAFolderThatIsLocked() throws IOException, InterruptedException {
        Chore.RECORD.lay(folder);
        Path plans = folder.resolve("plans/patients");
        Map<String, String> before = Chore.files(folder);
        lock(plans, true);
        try {
            assumeTrue(isLocked(plans), "NOT CHECKED: this user can write everywhere");
            TypedRun run = Chore.RECORD.here(folder);
            assertEquals(ExitCode.USAGE, run.exit(), run.err());
            assertTrue(
                    run.err().contains("ou may not read or write") || run.err().contains("could not be"), run.err());
            assertEquals(before, Chore.files(folder));
        } finally {
            lock(plans, false);
        }
    }

    private static void lock(Path folder, boolean on) throws IOException, InterruptedException {
        Path flag = Path.of("/usr/bin/chattr");
        if (Files.isExecutable(flag)) {
            new ProcessBuilder(flag.toString(), on ? "+i" : "-i", folder.toString())
                    .start()
                    .waitFor();
        }
        boolean isDone = folder.toFile().setWritable(!on);
        assertTrue(isDone || on, "the folder stays locked");
    }

    private static boolean isLocked(Path folder) {
        try {
            Files.delete(Files.createTempFile(folder, "try", ".tmp"));
            return false;
        } catch (IOException locked) {
            return true;
        }
    }
}

package cyclepacket;

import java.nio.file.Path;

/** Folders under {@code target} for what tests of several classes write: each process of a test run has its own. */
public final class TestPlace {
    /** The test run that this process belongs to; a process that no build started is a run of its own. */
    public static final String RUN = System.getProperty(
            "cyclepacket.run", "process " + ProcessHandle.current().pid());

    private static final String PROCESS = System.getProperty("cyclepacket.process", "1");

    private TestPlace() {}

    public static Path of(String name) {
        return Path.of("target", name + "-" + PROCESS);
    }
}

package cyclepacket;

import java.nio.file.Path;

/** Folders under {@code target} that tests of several classes share: each process of a test run has its own. */
public final class TestPlace {
    private static final String PROCESS = System.getProperty("cyclepacket.process", "1");

    private TestPlace() {}

    public static Path of(String name) {
        return Path.of("target", name + "-" + PROCESS);
    }
}

package cyclepacket.hostile;

import java.io.File;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The hostile run in a process of its own, under the eyes of {@link Watch}: {@code Watched folder seed checks packets}.
 * It prints its figures and every fault, and ends with 1 when there was one.
 */
final class Watched {
    private static final int MOST_FAULTS = 20;
    private static final int EVERY = 5_000;

    private final Watch watch;
    private int faults;

    private Watched(Watch watch) {
        this.watch = watch;
    }

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]).toAbsolutePath();
        long seed = Long.parseLong(args[1]);
        int checks = Integer.parseInt(args[2]);
        int packets = Integer.parseInt(args[3]);
        Demo demo = Demo.lay(folder);
        Files.createDirectories(folder.resolve("out"));
        Watched watched = new Watched(install(folder.resolve("out"), demo));
        watched.check(demo, seed, checks);
        if (packets > 0) {
            watched.print(demo, folder.resolve("out"), seed, packets);
        }
        System.exit(watched.faults == 0 ? 0 : 1);
    }

    private void check(Demo demo, long firstSeed, int cases) throws IOException {
        long began = System.nanoTime();
        CheckRun run = new CheckRun(demo);
        for (long seed = firstSeed; seed < firstSeed + cases; seed++) {
            watched(seed, run::run);
            if ((seed - firstSeed) % EVERY == EVERY - 1) {
                System.out.printf("%d of %d%n", seed - firstSeed + 1, cases);
            }
        }
        told(run.tally().table("read and checked", "accepted", "refused"), began);
    }

    private void print(Demo demo, Path out, long firstSeed, int packets) throws IOException {
        long began = System.nanoTime();
        try (PacketRun run = new PacketRun(demo, out)) {
            for (long seed = firstSeed; run.tally().accepted() < packets || run.isUncompared(); seed++) {
                watched(seed, run::run);
            }
            told(run.tally().table("accepted plans", "printed", "refused") + run.twins(), began);
        }
    }

    private static void told(String figures, long began) {
        System.out.print(figures);
        System.out.printf(java.util.Locale.ROOT, "%.0f s%n%n", (System.nanoTime() - began) / 1e9);
    }

    private void watched(long seed, Run run) throws IOException {
        try {
            run.run(seed);
            assertQuiet(seed);
        } catch (AssertionError fault) {
            fault.printStackTrace(System.out);
            if (++faults == MOST_FAULTS) {
                System.exit(1);
            }
        }
    }

    @FunctionalInterface
    private interface Run {
        void run(long seed) throws IOException;
    }

    /** Java 24 took the security manager away; without it files and connections go unwatched, the rest is the same. */
    static boolean canWatch() {
        return Runtime.version().feature() < 24;
    }

    @SuppressWarnings("removal")
    private static Watch install(Path out, Demo demo) throws IOException {
        List<Path> readable = new ArrayList<>();
        readable.add(Path.of("templates").toAbsolutePath());
        readable.add(demo.folder());
        // Java's own windows library looks here once; it is not the program that asks.
        readable.add(Path.of(System.getProperty("user.home"), ".accessibility.properties"));
        readable.add(Path.of(System.getProperty("java.home")).toRealPath());
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .forEach(entry -> readable.add(Path.of(entry).toAbsolutePath()));
        Watch watch = new Watch(readable, out, demo);
        // Java reads about its container once, when it is first asked for processor time.
        PacketRun.cpu();
        if (canWatch()) {
            System.setSecurityManager(watch);
            assertFires(watch, demo);
        } else {
            System.out.println("NOT WATCHED: this Java has no security manager");
        }
        return watch;
    }

    /** A watch that sees nothing proves nothing. */
    private static void assertFires(Watch watch, Demo demo) throws IOException {
        List<Attempt> attempts = List.of(
                () -> Files.readString(Path.of("/etc/hostname")),
                () -> Files.writeString(Path.of("pom.xml"), "gone"),
                () -> Files.writeString(demo.plans().get(0), "gone"),
                () -> Files.createTempDirectory("gone"),
                () -> new java.io.FileInputStream("README.md").close(),
                () -> Files.delete(Path.of("README.md")),
                () -> new Socket(InetAddress.getLoopbackAddress(), 9).close(),
                () -> java.net
                        .URI
                        .create("http://127.0.0.1:9/")
                        .toURL()
                        .openStream()
                        .close(),
                () -> new ProcessBuilder("true").start().destroy());
        for (Attempt attempt : attempts) {
            try {
                attempt.dare();
                throw new AssertionError("the watch did not forbid");
            } catch (SecurityException forbidden) {
                if (watch.takeSeen().isEmpty()) {
                    throw new AssertionError("the watch did not note", forbidden);
                }
            }
        }
    }

    private void assertQuiet(long seed) {
        List<String> seen = watch.takeSeen();
        if (!seen.isEmpty()) {
            throw new AssertionError("seed " + seed + ": " + seen);
        }
    }

    @FunctionalInterface
    private interface Attempt {
        void dare() throws IOException;
    }
}

package cyclepacket.hostile;

import com.sun.management.OperatingSystemMXBean;
import cyclepacket.finding.Finding;
import cyclepacket.packet.Outcome;
import cyclepacket.packet.Press;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Prints bent plans that pass the check. A plan with markup in it is printed twice, once with letters in place of its
 * signs: both must have the same elements and, sign for sign, the same words.
 */
final class PacketRun implements AutoCloseable {
    private static final List<Twist> KINDS = List.of(
            Twist.TEMPLATE_MARKUP,
            Twist.XML_MARKUP,
            Twist.TEMPLATE_MARKUP,
            Twist.XML_MARKUP,
            Twist.UNICODE,
            Twist.OTHER_NUMBER,
            Twist.DELETE,
            Twist.SWAP,
            Twist.DUPLICATE,
            Twist.DATE,
            Twist.LONG,
            Twist.PATH);
    private static final Set<Twist> MARKUP = EnumSet.of(Twist.TEMPLATE_MARKUP, Twist.XML_MARKUP);
    /** Processor time of two cold documents; nothing waits that long once the program is warm. */
    private static final long LONGEST_NANOS = 15_000_000_000L;

    private static final Instant AT = Instant.parse("2027-03-04T15:00:00Z");

    private final Demo demo;
    private final Path out;
    private final Press press = new Press(Path.of("").toAbsolutePath());
    private final Tally tally = new Tally();
    private int twins;

    PacketRun(Demo demo, Path out) {
        this.demo = demo;
        this.out = out;
    }

    Tally tally() {
        return tally;
    }

    /** Whether no plan with markup in it was printed and compared yet; a short run goes on until one was. */
    boolean isUncompared() {
        return twins == 0;
    }

    String twins() {
        return "printed again with letters in place of signs, and compared: " + twins + "\n";
    }

    @Override
    public void close() {
        press.close();
    }

    void run(long seed) throws IOException {
        Bent bent = Bent.of(demo, seed, KINDS);
        bent.in(demo, () -> {
            if (!CheckRun.check(bent.plan())) {
                return;
            }
            long before = cpu();
            Optional<Leaves> own = printed(bent);
            long spent = cpu() - before;
            if (spent > LONGEST_NANOS) {
                throw new AssertionError("took " + spent / 1_000_000 + " ms");
            }
            tally.add(bent, own.isPresent(), spent);
            if (own.isPresent() && MARKUP.contains(bent.kind())) {
                compare(bent, own.get());
            }
        });
    }

    /** Of the whole process: two documents are set at once. */
    static long cpu() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    private void compare(Bent bent, Leaves own) throws IOException {
        Bent twin = Bent.of(demo, bent.seed(), KINDS, Leaves::inLetters);
        demo.put(twin.file(), twin.bytes());
        if (CheckRun.check(twin.plan())) {
            printed(twin).ifPresent(other -> {
                own.assertSame(other);
                twins++;
            });
        }
    }

    private Optional<Leaves> printed(Bent bent) throws IOException {
        Path own = out.resolve("own");
        delete(own);
        Outcome outcome = press.print(bent.plan(), own, true, AT);
        if (outcome.written().isEmpty()) {
            if (outcome.findings().stream().noneMatch(Finding::isStop)) {
                throw new AssertionError("refused without a word");
            }
            if (Files.exists(own)) {
                throw new AssertionError("refused, and something was written");
            }
            return Optional.empty();
        }
        return Optional.of(Leaves.of(outcome.written().get()));
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }
}

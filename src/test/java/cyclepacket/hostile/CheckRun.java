package cyclepacket.hostile;

import cyclepacket.finding.Finding;
import cyclepacket.finding.FindingText;
import cyclepacket.packet.Reckoning;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.List;

/** Reads and checks one bent plan after another, as {@code check}, {@code ledger} and {@code supplies} do. */
final class CheckRun {
    private static final long LONGEST_NANOS = 2_000_000_000L;
    private static final Path TEMPLATES = Path.of("templates");

    private final Demo demo;
    private final Tally tally = new Tally();

    CheckRun(Demo demo) {
        this.demo = demo;
    }

    Tally tally() {
        return tally;
    }

    /** @throws AssertionError with the seed, when the program fails or takes too long */
    void run(long seed) throws IOException {
        Bent bent = Bent.of(demo, seed, List.of(Twist.values()));
        bent.in(demo, () -> {
            long before = cpu();
            boolean accepted = check(bent.plan());
            long spent = cpu() - before;
            if (spent > LONGEST_NANOS) {
                throw new AssertionError("took " + spent / 1_000_000 + " ms");
            }
            tally.add(bent, accepted, spent);
        });
    }

    /** Everything that is said about a plan; whether it may be printed. */
    static boolean check(Path plan) throws IOException {
        Reckoning reckoning = Reckoning.of(plan).in(TEMPLATES);
        List<Finding> findings = reckoning.findings();
        assertSafeToShow(FindingText.print(findings));
        assertSafeToShow(reckoning.findingsJson());
        if (!reckoning.areSumsStopped()) {
            assertSafeToShow(reckoning.ledgerTable());
            assertSafeToShow(reckoning.suppliesTable());
            assertSafeToShow(reckoning.ledgerJson());
            assertSafeToShow(reckoning.suppliesJson());
            // RFC 4180, section 2: a line of CSV ends with both marks.
            assertSafeToShow(reckoning.ledgerCsv().replace("\r\n", "\n"));
            reckoning.questions();
        }
        if (reckoning.isStopped() && findings.stream().noneMatch(Finding::isStop)) {
            throw new AssertionError("refused without a word");
        }
        return !reckoning.isStopped();
    }

    /** What is printed must not steer a terminal or turn digits round. */
    private static void assertSafeToShow(String text) {
        text.codePoints()
                .filter(c -> c < ' ' && c != '\n'
                        || c >= 0x7f && c < 0xa0
                        || c >= 0x202a && c <= 0x202e
                        || c >= 0x2066 && c <= 0x2069)
                .findFirst()
                .ifPresent(c -> {
                    throw new AssertionError(String.format("U+%04X is shown", c));
                });
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}

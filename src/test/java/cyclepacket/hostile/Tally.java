package cyclepacket.hostile;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/** How often each kind of damage was tried, and what came of it. */
final class Tally {
    private static final class Row {
        private int cases;
        private int accepted;
        private long nanos;
        private long slowest;
        private long slowestSeed;
    }

    private final Map<Twist, Row> rows = new EnumMap<>(Twist.class);

    void add(Bent bent, boolean accepted, long nanos) {
        Row row = rows.computeIfAbsent(bent.kind(), kind -> new Row());
        row.cases++;
        row.accepted += accepted ? 1 : 0;
        row.nanos += nanos;
        if (nanos > row.slowest) {
            row.slowest = nanos;
            row.slowestSeed = bent.seed();
        }
    }

    int cases() {
        return rows.values().stream().mapToInt(row -> row.cases).sum();
    }

    int accepted() {
        return rows.values().stream().mapToInt(row -> row.accepted).sum();
    }

    /** A table; times are processor time of the thread that worked. */
    String table(String title, String accepted, String refused) {
        StringBuilder table = new StringBuilder(String.format(
                Locale.ROOT,
                "%-16s %8s %8s %8s %9s %11s%n",
                title,
                "cases",
                accepted,
                refused,
                "mean ms",
                "slowest ms"));
        rows.forEach((kind, row) -> table.append(String.format(
                Locale.ROOT,
                "%-16s %8d %8d %8d %9.1f %11.1f  seed %d%n",
                kind.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                row.cases,
                row.accepted,
                row.cases - row.accepted,
                row.nanos / 1e6 / row.cases,
                row.slowest / 1e6,
                row.slowestSeed)));
        return table.append(String.format(
                        Locale.ROOT, "%-16s %8d %8d %8d%n", "all", cases(), accepted(), cases() - accepted()))
                .toString();
    }
}

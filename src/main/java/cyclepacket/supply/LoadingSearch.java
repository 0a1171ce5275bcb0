package cyclepacket.supply;

import cyclepacket.ledger.Container;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The best order to load what is at home: fewest new-cartridge evenings, then least left over in opened cartridges, then
 * soonest expiry. Alike containers are exchanged for nothing, so that one best row is kept for each set of kinds and the
 * total it reaches.
 */
final class LoadingSearch {
    /** More sets than this are not compared; a home has a handful of boxes. A technical limit. */
    private static final int MOST_SETS = 20_000;

    private final EveningTotals totals;
    private final long start;
    private final int startEvening;
    private final boolean partUsedFirst;

    /**
     * Containers in a row.
     *
     * @param total what they reach
     * @param left thousandths that stay behind in them
     */
    record Row(List<Container> order, long total, int evening, int evenings, long left) {
        private static final Comparator<Row> BEST = Comparator.comparingInt(Row::evenings)
                .thenComparingLong(Row::left)
                .thenComparing(Row::expiries, LoadingSearch::compareDates);

        private List<LocalDate> expiries() {
            return order.stream()
                    .map(container -> container.expires().orElse(LocalDate.MAX))
                    .toList();
        }

        boolean isBetterThan(Row other) {
            return BEST.compare(this, other) < 0;
        }
    }

    private record Kind(long least, Optional<LocalDate> opened, Optional<LocalDate> expires, boolean isPartUsed) {
        static Kind of(Container container) {
            return new Kind(
                    container.least().milliUnits(),
                    container.opened(),
                    container.expires(),
                    container.opened().isPresent());
        }
    }

    private record Set(Map<Kind, Integer> taken, long total) {}

    /**
     * @param start the total at which the first of them is loaded
     * @param startEvening the evening on which the cartridge before runs dry; {@link EveningTotals#NONE} without one
     */
    LoadingSearch(EveningTotals totals, long start, int startEvening, boolean partUsedFirst) {
        this.totals = totals;
        this.start = start;
        this.startEvening = startEvening;
        this.partUsedFirst = partUsedFirst;
    }

    private static int compareDates(List<LocalDate> one, List<LocalDate> other) {
        for (int index = 0; index < Math.min(one.size(), other.size()); index++) {
            int order = one.get(index).compareTo(other.get(index));
            if (order != 0) {
                return order;
            }
        }
        // As good so far: the shorter row opens less.
        return Integer.compare(one.size(), other.size());
    }

    private Row empty() {
        return new Row(List.of(), start, startEvening, 0, 0);
    }

    /** These containers in this order, until the need is covered. */
    Row inOrder(List<Container> containers) {
        Row row = empty();
        for (Container container : containers) {
            row = row.total() < totals.goal() ? with(row, container) : row;
        }
        return row;
    }

    private Row with(Row row, Container container) {
        long content = container.least().milliUnits();
        long reached = container.opened().isPresent()
                ? totals.reach(row.total(), content, container.opened().get())
                : totals.reach(row.total(), content);
        long total = Math.min(reached, totals.goal());
        int evening = total < totals.goal() ? totals.evening(total) : row.evening();
        List<Container> order = new ArrayList<>(row.order());
        order.add(container);
        return new Row(
                order,
                total,
                evening,
                row.evenings() + (evening == row.evening() ? 0 : 1),
                row.left() + row.total() + content - total);
    }

    /** The best order; empty when there are too many to compare. */
    Optional<Row> best(List<Container> containers) {
        Map<Kind, List<Container>> kinds = new TreeMap<>(Comparator.comparing(Kind::toString));
        containers.forEach(container -> kinds.computeIfAbsent(Kind.of(container), kind -> new ArrayList<>())
                .add(container));
        Map<Set, Row> layer = new HashMap<>(Map.of(new Set(Map.of(), start), empty()));
        Optional<Row> best = Optional.empty();
        for (int loaded = 0; loaded < containers.size() && !layer.isEmpty(); loaded++) {
            Map<Set, Row> next = new HashMap<>();
            for (Map.Entry<Set, Row> entry : layer.entrySet()) {
                extend(entry.getKey(), entry.getValue(), kinds, next);
            }
            if (next.size() > MOST_SETS) {
                return Optional.empty();
            }
            boolean isLast = loaded == containers.size() - 1;
            for (Row row : next.values()) {
                boolean isDone = isLast || row.total() >= totals.goal();
                best = isDone && best.filter(known -> !row.isBetterThan(known)).isEmpty() ? Optional.of(row) : best;
            }
            next.values().removeIf(row -> row.total() >= totals.goal());
            layer = next;
        }
        return best;
    }

    private void extend(Set set, Row row, Map<Kind, List<Container>> kinds, Map<Set, Row> next) {
        boolean partUsedLeft = partUsedFirst
                && kinds.entrySet().stream()
                        .anyMatch(kind -> kind.getKey().isPartUsed() && isLeft(set, kind.getKey(), kind.getValue()));
        for (Map.Entry<Kind, List<Container>> kind : kinds.entrySet()) {
            boolean isAllowed = !partUsedLeft || kind.getKey().isPartUsed();
            if (isAllowed && isLeft(set, kind.getKey(), kind.getValue())) {
                int taken = set.taken().getOrDefault(kind.getKey(), 0);
                Row longer = with(row, kind.getValue().get(taken));
                Map<Kind, Integer> more = new HashMap<>(set.taken());
                more.put(kind.getKey(), taken + 1);
                next.merge(
                        new Set(more, longer.total()), longer, (one, other) -> other.isBetterThan(one) ? other : one);
            }
        }
    }

    private static boolean isLeft(Set set, Kind kind, List<Container> all) {
        return set.taken().getOrDefault(kind, 0) < all.size();
    }
}

package cyclepacket.supply;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The best set of containers that covers a need, found exactly: a programme over the totals that a row of containers can
 * reach, smallest total first. What matters of the containers before is only the total they reach, so one best row is
 * kept for each total.
 */
final class BasketSearch {
    /** More containers than this are no shopping list; the search says so and ends. A technical limit. */
    static final int MOST_CONTAINERS = 1_000;

    /** A technical limit of memory. */
    private static final int MOST_TOTALS = 200_000;

    private final List<Offer> offers;
    private final Comparator<Row> order;

    /**
     * One size as the search sees it.
     *
     * @param content the least it gives, in thousandths, above zero
     * @param cost what counts as its cost: hundredths of the currency, or thousandths on its label
     */
    record Offer(long content, long cost) {}

    /** What to look for first. */
    enum Goal {
        /** Cost, then containers, then new-cartridge evenings. */
        CHEAPEST(
                Comparator.comparingLong(Row::cost).thenComparingInt(Row::count).thenComparingInt(Row::evenings)),
        /** New-cartridge evenings, then cost, then containers. */
        FEWEST_EVENINGS(Comparator.comparingInt(Row::evenings)
                .thenComparingLong(Row::cost)
                .thenComparingInt(Row::count));

        private final Comparator<Row> order;

        Goal(Comparator<Row> order) {
            this.order = order.thenComparingLong(Row::content);
        }
    }

    /**
     * Containers in a row.
     *
     * @param offer the last of them; -1 for an empty row
     * @param content what they give in sum, in-use days not counted
     */
    record Row(Row before, int offer, long cost, int count, int evenings, long content) {
        static final Row EMPTY = new Row(null, -1, 0, 0, 0, 0);

        /** The offers of the row, first to last. */
        List<Integer> offers() {
            List<Integer> all = new ArrayList<>();
            for (Row row = this; row.before != null; row = row.before) {
                all.add(row.offer);
            }
            Collections.reverse(all);
            return all;
        }
    }

    BasketSearch(List<Offer> offers, Goal goal) {
        this.offers = List.copyOf(offers);
        order = goal.order;
    }

    /**
     * The best row that reaches {@code goal}.
     *
     * @param start the total of what is at hand
     * @param isSomethingInUse whether a container runs dry at {@code start}
     * @return empty when there is nothing to buy it with, or when it takes more than {@value #MOST_CONTAINERS} containers
     */
    Optional<Row> find(EveningTotals totals, long start, boolean isSomethingInUse, long goal) {
        if (start >= goal) {
            return Optional.of(Row.EMPTY);
        }
        long largest = offers.stream().mapToLong(Offer::content).max().orElse(0);
        if (largest == 0 || (goal - start - 1) / largest >= MOST_CONTAINERS) {
            return Optional.empty();
        }
        TreeMap<Long, Row> open = new TreeMap<>();
        open.put(start, Row.EMPTY);
        for (int tries = 0; tries < MOST_TOTALS && !open.isEmpty(); tries++) {
            Map.Entry<Long, Row> next = open.pollFirstEntry();
            if (next.getKey() >= goal) {
                return Optional.of(next.getValue());
            }
            boolean first = next.getValue().count() == 0 && !isSomethingInUse;
            int evening = first ? EveningTotals.NONE : totals.evening(next.getKey());
            extend(totals, next.getKey(), next.getValue(), evening, goal, open);
        }
        return Optional.empty();
    }

    private void extend(EveningTotals totals, long total, Row row, int evening, long goal, TreeMap<Long, Row> open) {
        if (row.count() == MOST_CONTAINERS) {
            return;
        }
        for (int index = 0; index < offers.size(); index++) {
            Offer offer = offers.get(index);
            long reached = Math.min(goal, totals.reach(total, offer.content()));
            boolean again = reached < goal && totals.evening(reached) != evening;
            Row longer = new Row(
                    row,
                    index,
                    Math.addExact(row.cost(), offer.cost()),
                    row.count() + 1,
                    row.evenings() + (again ? 1 : 0),
                    row.content() + offer.content());
            open.merge(reached, longer, (one, other) -> order.compare(other, one) < 0 ? other : one);
        }
    }
}

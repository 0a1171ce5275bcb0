package cyclepacket.supply;

import cyclepacket.ledger.Draw;
import cyclepacket.plan.Medicine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Tries every row of containers and acts each one out, injection by injection, without any of the sums under test. */
final class EveryRow {
    private final int openedDays;
    private final List<Draw> draws;
    private final List<BasketSearch.Offer> offers;
    private final long start;
    private List<Long> cheapest = List.of();
    private List<Long> calmest = List.of();

    EveryRow(Medicine medicine, List<Draw> draws, List<BasketSearch.Offer> offers, long start) {
        openedDays = medicine.device().pen().orElseThrow().openedDays();
        this.draws = draws;
        this.offers = offers;
        this.start = start;
        tryAll(new ArrayList<>());
    }

    /** Cost, containers, new-cartridge evenings of the best row. */
    List<Long> cheapest() {
        return cheapest;
    }

    /** New-cartridge evenings, cost, containers of the best row. */
    List<Long> calmest() {
        return calmest;
    }

    static boolean covers(Medicine medicine, List<Draw> draws, long start, List<Long> contents) {
        int days = medicine.device().pen().orElseThrow().openedDays();
        return evenings(days, draws, start, contents).isPresent();
    }

    private void tryAll(List<Integer> row) {
        List<Long> contents =
                row.stream().map(offer -> offers.get(offer).content()).toList();
        Optional<Integer> evenings = evenings(openedDays, draws, start, contents);
        if (evenings.isPresent()) {
            long cost =
                    row.stream().mapToLong(offer -> offers.get(offer).cost()).sum();
            cheapest = least(cheapest, List.of(cost, (long) row.size(), (long) evenings.get()));
            calmest = least(calmest, List.of((long) evenings.get(), cost, (long) row.size()));
            return;
        }
        for (int offer = 0; offer < offers.size(); offer++) {
            row.add(offer);
            tryAll(row);
            row.remove(row.size() - 1);
        }
    }

    private static List<Long> least(List<Long> known, List<Long> other) {
        for (int index = 0; index < known.size(); index++) {
            int order = known.get(index).compareTo(other.get(index));
            if (order != 0) {
                return order < 0 ? known : other;
            }
        }
        return known.isEmpty() ? other : known;
    }

    /** The evenings on which a bought container is left for the next one; empty when the row runs out. */
    private static Optional<Integer> evenings(int openedDays, List<Draw> draws, long start, List<Long> contents) {
        Set<LocalDate> changes = new TreeSet<>();
        LocalDate homeEnds = null;
        int next = 0;
        long left = start;
        boolean isHome = start > 0;
        LocalDate opened = null;
        for (Draw draw : draws) {
            long amount = draw.dialled().milliUnits();
            boolean isTooOld = opened != null && draw.date().isAfter(opened.plusDays(openedDays - 1L));
            left = isTooOld ? 0 : left;
            while (amount > left) {
                amount -= left;
                if (isHome) {
                    homeEnds = draw.date();
                } else if (opened != null) {
                    changes.add(draw.date());
                }
                if (next == contents.size()) {
                    return Optional.empty();
                }
                isHome = false;
                left = contents.get(next++);
                opened = draw.date();
            }
            left -= amount;
        }
        if (homeEnds != null) {
            changes.remove(homeEnds);
        }
        return Optional.of(changes.size());
    }
}

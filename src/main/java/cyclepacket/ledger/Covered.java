package cyclepacket.ledger;

import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How far the containers at home reach.
 *
 * @param surelyUntil the last evening they cover with the least content; empty when the first dose is already short
 * @param possiblyUntil the last evening they cover with the most content
 * @param firstShort the first evening that the least content does not cover; empty when nothing runs short
 * @param shortAtMost what is missing by the end of the course with the least content
 */
public record Covered(
        Optional<LocalDate> surelyUntil,
        Optional<LocalDate> possiblyUntil,
        Optional<LocalDate> firstShort,
        Dose shortAtMost) {
    public Covered {
        Objects.requireNonNull(surelyUntil, "surelyUntil");
        Objects.requireNonNull(possiblyUntil, "possiblyUntil");
        Objects.requireNonNull(firstShort, "firstShort");
        Objects.requireNonNull(shortAtMost, "shortAtMost");
    }

    static Covered of(List<Evening> evenings, List<Draw> draws, Dose leastTotal, Dose mostTotal) {
        Optional<LocalDate> firstShort = firstBeyond(draws, leastTotal);
        Dose needed = draws.isEmpty() ? leastTotal : draws.get(draws.size() - 1).after();
        return new Covered(
                lastWithin(evenings, firstShort),
                lastWithin(evenings, firstBeyond(draws, mostTotal)),
                firstShort,
                needed.isMoreThan(leastTotal) ? needed.minus(leastTotal) : Dose.zero(leastTotal.unit()));
    }

    private static Optional<LocalDate> firstBeyond(List<Draw> draws, Dose total) {
        return draws.stream()
                .filter(draw -> draw.after().isMoreThan(total))
                .map(Draw::date)
                .findFirst();
    }

    private static Optional<LocalDate> lastWithin(List<Evening> evenings, Optional<LocalDate> firstShort) {
        return evenings.stream()
                .map(Evening::date)
                .filter(date -> firstShort.isEmpty() || date.isBefore(firstShort.get()))
                .reduce((earlier, later) -> later);
    }
}

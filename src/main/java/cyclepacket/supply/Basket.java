package cyclepacket.supply;

import cyclepacket.plan.Medicine;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseUnit;
import cyclepacket.quantity.Money;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A set of containers to buy.
 *
 * @param loaded one size a container, in the loading order that takes the fewest new-cartridge evenings
 * @param changeEvenings evenings to come on which a cartridge runs dry with the least content and another one is loaded,
 *     those of the cartridges at home not counted
 */
public record Basket(DoseUnit unit, List<Medicine.Size> loaded, int changeEvenings) {
    public Basket {
        Objects.requireNonNull(unit, "unit");
        loaded = List.copyOf(loaded);
    }

    static Basket empty(DoseUnit unit) {
        return new Basket(unit, List.of(), 0);
    }

    /** One size and how many of it. */
    public record Line(Medicine.Size size, int count) {}

    public boolean isEmpty() {
        return loaded.isEmpty();
    }

    /** How many containers it holds. */
    public int count() {
        return loaded.size();
    }

    /** The sizes with their counts, the largest first. */
    public List<Line> lines() {
        Map<Dose, Integer> counts = new TreeMap<>(Comparator.reverseOrder());
        loaded.forEach(size -> counts.merge(size.label(), 1, Integer::sum));
        return counts.entrySet().stream()
                .map(entry -> new Line(
                        loaded.stream()
                                .filter(size -> size.label().equals(entry.getKey()))
                                .findFirst()
                                .orElseThrow(),
                        entry.getValue()))
                .toList();
    }

    /** What the labels say in sum. */
    public Dose labelled() {
        return loaded.stream().map(Medicine.Size::label).reduce(Dose.zero(unit), Dose::plus);
    }

    /** The price of all; empty when a size in it has none. */
    public Optional<Money> cost() {
        if (loaded.stream().anyMatch(size -> size.price().isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(
                loaded.stream().map(size -> size.price().orElseThrow()).reduce(new Money(0), Money::plus));
    }

    /** The same containers, whatever the order. */
    boolean holdsTheSameAs(Basket other) {
        return lines().equals(other.lines());
    }
}

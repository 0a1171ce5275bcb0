package cyclepacket.intake;

import java.util.Optional;

/**
 * A way through a tree along a JSON pointer, as far as it goes.
 *
 * @param reached the last value that exists; empty only for a file without a tree
 * @param keySpot where the key of that value stands, or the value itself in a list
 */
record Walk(Optional<Tree> reached, Spot keySpot, boolean isComplete) {

    static Walk from(Optional<Tree> root, String pointer) {
        Walk walk = new Walk(root, root.map(Tree::spot).orElse(Spot.START), true);
        for (String name : Pointers.names(pointer)) {
            Walk next = walk.step(name);
            if (!next.isComplete) {
                return next;
            }
            walk = next;
        }
        return walk;
    }

    Spot spot() {
        return reached.map(Tree::spot).orElse(Spot.START);
    }

    private Walk step(String name) {
        if (reached.isPresent()
                && reached.get() instanceof Tree.Mapping mapping
                && mapping.entries().containsKey(name)) {
            Tree.Entry entry = mapping.entries().get(name);
            return new Walk(Optional.of(entry.value()), entry.key(), true);
        }
        if (reached.isPresent()
                && reached.get() instanceof Tree.Sequence sequence
                && isIndex(name, sequence.items().size())) {
            Tree item = sequence.items().get(Integer.parseInt(name));
            return new Walk(Optional.of(item), item.spot(), true);
        }
        return new Walk(reached, keySpot, false);
    }

    private static boolean isIndex(String name, int size) {
        return !name.isEmpty()
                && name.length() < 8
                && name.chars().allMatch(c -> c >= '0' && c <= '9')
                && Integer.parseInt(name) < size;
    }
}

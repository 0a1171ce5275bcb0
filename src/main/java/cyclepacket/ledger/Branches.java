package cyclepacket.ledger;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * Where one container can end, apart for each number of unknown settings that the containers up to it have met. An
 * unknown setting counts in full in the totals; whichever container was in use may hold that much more.
 *
 * @param byMet ends by the number of unknown settings met so far
 */
record Branches(TreeMap<Integer, Ends> byMet) {

    static Branches start(Timeline line) {
        Branches start = new Branches(new TreeMap<>());
        start.byMet.put(0, Ends.start(line));
        return start;
    }

    static Branches of(int met, Ends ends) {
        Branches only = new Branches(new TreeMap<>());
        only.add(met, ends);
        return only;
    }

    private void add(int met, Ends ends) {
        if (!ends.isEmpty()) {
            byMet.merge(met, ends, Ends::or);
        }
    }

    boolean isEmpty() {
        return byMet.isEmpty();
    }

    Ends union() {
        return byMet.values().stream().reduce(Ends.none(), Ends::or);
    }

    /**
     * The next container. Both sums rise with every content, so the extremes of the result come from the extremes of
     * the contents.
     *
     * @param unknowns the settings of which nobody knows how much was drawn
     */
    Branches next(Container container, List<Integer> unknowns, Timeline line) {
        Branches next = new Branches(new TreeMap<>());
        for (Map.Entry<Integer, Ends> branch : byMet.entrySet()) {
            for (Opening opening : Opening.all(branch.getValue(), container.opened(), line)) {
                Spans reach = opening.totals()
                        .plus(container.least().milliUnits(), container.most().milliUnits());
                next.addFrom(opening, reach, branch.getKey(), unknowns, line);
            }
        }
        return next;
    }

    private void addFrom(Opening opening, Spans first, int firstMet, List<Integer> unknowns, Timeline line) {
        Spans reach = first;
        int met = firstMet;
        while (met < unknowns.size() && opening.isUsableOn(unknowns.get(met)) && !reach.isEmpty()) {
            Draw draw = line.draw(unknowns.get(met));
            // It ran dry before this setting or inside it: then the next container may hold the rest.
            add(met, ended(reach.between(Long.MIN_VALUE, draw.after().milliUnits() - 1), opening, line));
            reach = reach.between(draw.before().milliUnits(), Long.MAX_VALUE)
                    .plus(0, draw.unknown().milliUnits());
            met++;
        }
        if (!reach.isEmpty()) {
            add(met, ended(reach, opening, line));
        }
    }

    /** Past its in-use days a container is left before the next setting and its rest is lost. */
    private static Ends ended(Spans reach, Opening opening, Timeline line) {
        Ends none = Ends.none();
        if (reach.isEmpty() || opening.cut().isEmpty()) {
            return new Ends(reach, none.limits(), none.readAt());
        }
        int cut = opening.cut().getAsInt();
        long limit = line.draw(cut).before().milliUnits();
        if (reach.max() >= limit) {
            none.limits().put(cut, limit);
        }
        return new Ends(reach.between(Long.MIN_VALUE, limit - 1), none.limits(), none.readAt());
    }

    /** Without the settings in which the record proves that nothing ended. */
    Branches without(BitSet proven, Timeline line) {
        return map(ends -> ends.without(proven, line));
    }

    /** Only ends before setting {@code index}. */
    Branches before(int index, Timeline line) {
        return map(ends -> ends.before(index, line));
    }

    private Branches map(UnaryOperator<Ends> change) {
        Branches changed = new Branches(new TreeMap<>());
        byMet.forEach((met, ends) -> changed.add(met, change.apply(ends)));
        return changed;
    }
}

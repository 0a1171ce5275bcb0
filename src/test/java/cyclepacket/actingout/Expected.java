package cyclepacket.actingout;

import cyclepacket.actingout.Foretold.Change;
import cyclepacket.actingout.Foretold.Entry;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What must be foretold for a plan without a past: no more and no less than what can be acted; trails apart. */
final class Expected {
    private Expected() {}

    static Foretold of(Case plan) {
        Story least = plan.live(plan.allLeast());
        Story most = plan.live(plan.allMost());
        return new Foretold(
                entries(plan, least, most),
                changes(plan, least, most),
                List.of(),
                List.of(),
                least.coveredUntil(),
                most.coveredUntil(),
                least.firstShort(),
                least.shortBy(),
                List.of());
    }

    private static List<Entry> entries(Case plan, Story least, Story most) {
        Reach reach = new Reach(plan);
        Map<Entry, Entry> places = new TreeMap<>();
        for (Reach.Possible possible : reach.possibleEnds()) {
            End most1 = reach.endAt(possible, possible.totals().least());
            End least1 = reach.endAt(possible, possible.totals().most());
            Entry entry = new Entry(
                    most1.box(),
                    most1.date(),
                    most1.setting(),
                    most1.inUseLimit(),
                    isCertain(most1, least, most),
                    least1.owed(),
                    most1.owed());
            places.merge(entry, entry, Expected::hull);
        }
        Collection<Entry> entries = places.values();
        return new ArrayList<>(entries);
    }

    private static Entry hull(Entry one, Entry other) {
        return new Entry(
                one.box(),
                one.date(),
                one.setting(),
                one.inUseLimit(),
                one.certain(),
                Math.min(one.owedLeast(), other.owedLeast()),
                Math.max(one.owedMost(), other.owedMost()));
    }

    /** The end moves only later as contents rise, so the two extreme worlds decide for all. */
    private static boolean isCertain(End end, Story least, Story most) {
        return least.endOf(end.box()).map(End::date).equals(Optional.of(end.date()))
                && most.endOf(end.box()).map(End::date).equals(Optional.of(end.date()));
    }

    private static List<Change> changes(Case plan, Story least, Story most) {
        List<Change> changes = new ArrayList<>();
        for (int box = 1; box <= plan.boxes().size(); box++) {
            Optional<End> latest = most.endOf(box);
            int it = box;
            least.endOf(box).ifPresent(end -> changes.add(new Change(it, end.date(), latest.map(End::date))));
        }
        return changes;
    }
}

package cyclepacket.actingout;

import cyclepacket.actingout.Chains.Link;
import cyclepacket.actingout.Foretold.Change;
import cyclepacket.actingout.Foretold.Entry;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The ends that agree with a record, no more and no less; for records without losses and without unknown amounts. */
final class ExpectedOfRecord {
    private final Chains chains;
    private final int boxes;

    ExpectedOfRecord(Case plan) {
        this.chains = new Chains(plan);
        this.boxes = plan.boxes().size();
    }

    List<Entry> entries() {
        Map<Entry, Entry> places = new TreeMap<>();
        for (int box = 1; box <= boxes; box++) {
            for (Link link : chains.livedLinks(box)) {
                for (long[] part : link.lived) {
                    Entry entry = entry(link, part);
                    places.merge(entry, entry, ExpectedOfRecord::hull);
                }
            }
        }
        return new ArrayList<>(places.values());
    }

    List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        for (int box = 1; box <= boxes; box++) {
            List<LocalDate> dates = dates(box);
            if (!dates.isEmpty()) {
                Optional<LocalDate> latest = Optional.of(dates.get(dates.size() - 1));
                boolean mayLast = box >= chains.firstThatMayLast();
                changes.add(new Change(box, dates.get(0), latest.filter(date -> !mayLast)));
            }
        }
        return changes;
    }

    private List<LocalDate> dates(int box) {
        return chains.livedLinks(box).stream()
                .map(link -> chains.turns().get(link.turn).date())
                .distinct()
                .sorted()
                .toList();
    }

    private Entry entry(Link link, long[] part) {
        Turns.Turn turn = chains.turns().get(link.turn);
        boolean certain = dates(link.box).size() == 1 && link.box < chains.firstThatMayLast();
        boolean thrown = link.stop == 0;
        long full = turn.before() + turn.dialled();
        return new Entry(
                link.box,
                turn.date(),
                turn.setting(),
                thrown,
                certain,
                thrown ? 0 : Math.max(chains.unit(), full - part[1]),
                thrown ? 0 : full - part[0]);
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
}

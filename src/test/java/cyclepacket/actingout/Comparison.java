package cyclepacket.actingout;

import cyclepacket.actingout.Foretold.Change;
import cyclepacket.actingout.Foretold.Entry;
import java.util.List;
import java.util.Optional;

/** Holds what was foretold for a plan against one world that was acted out. */
final class Comparison {
    private final Case plan;
    private final Foretold foretold;
    private final Faults faults;

    Comparison(Case plan, Foretold foretold, Faults faults) {
        this.plan = plan;
        this.foretold = foretold;
        this.faults = faults;
    }

    void with(List<Long> contents) {
        Story story = plan.live(contents);
        String where = "seed " + plan.seed() + ", contents " + contents + ": ";
        everyEndIsForetold(where, story);
        whatIsCertainHappens(where, story);
        for (int box = 1; box <= plan.boxes().size(); box++) {
            changesSpan(where, box, foretold.changeOf(box), story.endOf(box));
        }
        coverHolds(where, story);
    }

    private void everyEndIsForetold(String where, Story story) {
        for (End end : story.ends()) {
            if (foretold.entries().stream().noneMatch(entry -> entry.holds(end))) {
                faults.add("not foretold", where + end + "\n   in " + foretold.entries());
            }
        }
    }

    private void whatIsCertainHappens(String where, Story story) {
        for (Entry entry : foretold.entries()) {
            boolean ends = story.endOf(entry.box()).map(End::date).equals(Optional.of(entry.date()));
            if (entry.certain() && !ends) {
                faults.add("not certain", where + entry);
            }
        }
    }

    private void changesSpan(String where, int box, Optional<Change> change, Optional<End> end) {
        if (end.isPresent() && change.filter(it -> it.spans(end.get().date())).isEmpty()) {
            faults.add("outside earliest and latest", where + end.get() + "\n   outside " + change);
        }
        if (end.isEmpty() && change.flatMap(Change::latest).isPresent()) {
            faults.add("outside earliest and latest", where + "box " + box + " never ends\n   but " + change);
        }
    }

    private void coverHolds(String where, Story story) {
        boolean surely = foretold.surelyUntil().isEmpty()
                || story.coveredUntil()
                        .filter(day -> !day.isBefore(foretold.surelyUntil().get()))
                        .isPresent();
        // A past evening of which nobody knows what was drawn counts as a whole dose, whatever was drawn.
        boolean possibly = story.coveredUntil().filter(day -> !plan.isPast(day)).isEmpty()
                || foretold.possiblyUntil()
                        .filter(day -> !day.isBefore(story.coveredUntil().get()))
                        .isPresent();
        boolean shortFrom = story.firstShort().isEmpty()
                || foretold.firstShort()
                        .filter(day -> !day.isAfter(story.firstShort().get()))
                        .isPresent();
        if (!surely || !possibly || !shortFrom || story.shortBy() > foretold.shortAtMost()) {
            faults.add(
                    "cover",
                    where + "covered until " + story.coveredUntil() + ", short from " + story.firstShort() + " by "
                            + story.shortBy() + "\n   but " + foretold);
        }
    }
}

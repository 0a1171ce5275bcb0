package cyclepacket.actingout;

import cyclepacket.actingout.Foretold.Change;
import cyclepacket.actingout.Foretold.Entry;
import java.time.LocalDate;
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
        foretold.trails().forEach(trail -> trailHolds(where, trail, story));
    }

    private void trailHolds(String where, Trail trail, Story story) {
        if (!trail.fitsOpening(Trail.openingOf(story, trail.box()))) {
            faults.add("opening", where + "opened on " + story.openedOn() + "\n   but " + trail);
        }
        story.endOf(trail.box()).map(end -> Trail.totalAt(story, end)).ifPresent(total -> {
            if (total < trail.leastTotal() || trail.mostTotal() < total) {
                faults.add("total", where + total + " let out\n   but " + trail);
            }
        });
    }

    /** Without a record, the worlds of all least and all most contents reach both ends of every trail. */
    void reachesBothEndsOfTheTrails() {
        Story least = plan.live(plan.allLeast());
        Story most = plan.live(plan.allMost());
        for (Trail trail : foretold.trails()) {
            Optional<LocalDate> first = Trail.openingOf(least, trail.box());
            boolean reached = trail.firstOpening().equals(first)
                    && trail.lastOpening().equals(Trail.openingOf(most, trail.box()))
                    && trail.lastSafeDay().equals(first.map(date -> plan.lastDayOf(trail.box(), date)))
                    && totalIs(least, trail.box(), trail.leastTotal())
                    && totalIs(most, trail.box(), trail.mostTotal());
            if (!reached) {
                faults.add("trail", "seed " + plan.seed() + ": " + trail + "\n   least " + least + "\n   most " + most);
            }
        }
    }

    private static boolean totalIs(Story story, int box, long total) {
        return story.endOf(box).map(end -> Trail.totalAt(story, end) == total).orElse(true);
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

package cyclepacket.actingout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.actingout.Foretold.Change;
import cyclepacket.actingout.Foretold.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The closed form against the literal acting-out, over seeded random plans. {@code -Dcyclepacket.seed=n} starts at
 * another seed and {@code -Dcyclepacket.plans=n} takes another number of plans; a failure prints the seed of its plan.
 */
class ActingOutLaws {
    private static final long FIRST_SEED = Long.getLong("cyclepacket.seed", 20_270_305L);
    private static final int PLANS = Integer.getInteger("cyclepacket.plans", 10_000);
    private static final int WORLDS = 8;

    private final Tally tally = new Tally();
    private final List<String> faults = new ArrayList<>();
    private int acted;

    @Test
    void closedFormAgreesWithActingOut() {
        for (long seed = FIRST_SEED; seed < FIRST_SEED + PLANS; seed++) {
            Case plan = CaseMaker.make(seed);
            tally.count(plan, plan.live(plan.truth()));
            if (plan.hasPast()) {
                comparesWithARecord(plan);
            } else {
                comparesWithoutARecord(plan);
            }
        }
        System.out.println("acting out: seed " + FIRST_SEED + ", " + PLANS + " plans, " + acted + " worlds, " + tally);
        assertTrue(faults.isEmpty(), () -> faults.size() + " faults\n"
                + faults.stream().limit(20).collect(Collectors.joining("\n")));
        assertEquals(List.of(), tally.missed(PLANS), "situations that too few plans met");
    }

    private void comparesWithoutARecord(Case plan) {
        Foretold foretold = ClosedForm.of(plan);
        Foretold expected = Expected.of(plan);
        if (!foretold.equals(expected)) {
            faults.add("seed " + plan.seed() + "\n expected " + expected + "\n foretold " + foretold);
            return;
        }
        Chance chance = Chance.seeded(plan.seed());
        Worlds worlds = new Worlds(chance, plan.pen(), plan.boxes());
        compare(plan, foretold, plan.truth());
        compare(plan, foretold, plan.allLeast());
        compare(plan, foretold, plan.allMost());
        for (int world = 0; world < WORLDS; world++) {
            compare(plan, foretold, world % 2 == 0 ? endingWithAnInjection(plan, worlds) : worlds.any(world == 1));
        }
    }

    /** Contents with which some boxes together hold exactly what some injections take. */
    private static List<Long> endingWithAnInjection(Case plan, Worlds worlds) {
        int boxes = worlds.chance().from(1, plan.boxes().size());
        Timeline line = new Timeline(plan, 1);
        return worlds.summingTo(boxes, line.totalBefore(worlds.chance().from(1, line.turns())));
    }

    private void comparesWithARecord(Case plan) {
        Foretold foretold = ClosedForm.of(plan);
        if (!foretold.stops().isEmpty()) {
            faults.add("seed " + plan.seed() + ": a true record is refused: " + foretold.stops());
            return;
        }
        for (List<Long> contents : new OtherWorlds(plan, Chance.seeded(plan.seed())).found(WORLDS * 2)) {
            compare(plan, foretold, contents);
        }
        neverWidens(plan, foretold);
    }

    private void compare(Case plan, Foretold foretold, List<Long> contents) {
        acted++;
        Story story = plan.live(contents);
        String where = "seed " + plan.seed() + ", contents " + contents + ": ";
        for (End end : story.ends()) {
            if (foretold.entries().stream().noneMatch(entry -> entry.holds(end))) {
                faults.add(where + "not foretold: " + end + "\n   in " + foretold.entries());
            }
        }
        for (Entry entry : foretold.entries()) {
            boolean ends = story.endOf(entry.box()).map(End::date).equals(Optional.of(entry.date()));
            if (entry.certain() && !ends) {
                faults.add(where + "foretold as certain, not acted: " + entry);
            }
        }
        for (int box = 1; box <= plan.boxes().size(); box++) {
            compareChange(where, box, foretold.changeOf(box), story.endOf(box));
        }
        compareCover(where, foretold, story);
    }

    private void compareChange(String where, int box, Optional<Change> change, Optional<End> end) {
        if (end.isPresent() && change.filter(it -> it.spans(end.get().date())).isEmpty()) {
            faults.add(where + end.get() + " outside " + change);
        }
        if (end.isEmpty() && change.flatMap(Change::latest).isPresent()) {
            faults.add(where + "box " + box + " never ends, foretold " + change);
        }
    }

    private void compareCover(String where, Foretold foretold, Story story) {
        boolean surelyHolds = foretold.surelyUntil().isEmpty()
                || story.coveredUntil().filter(day -> !day.isBefore(foretold.surelyUntil().get())).isPresent();
        boolean possiblyHolds = story.coveredUntil().isEmpty()
                || foretold.possiblyUntil().filter(day -> !day.isBefore(story.coveredUntil().get())).isPresent();
        boolean shortHolds = story.firstShort().isEmpty()
                || foretold.firstShort().filter(day -> !day.isAfter(story.firstShort().get())).isPresent();
        if (!surelyHolds || !possiblyHolds || !shortHolds || story.shortBy() > foretold.shortAtMost()) {
            faults.add(where + "covered until " + story.coveredUntil() + ", short from " + story.firstShort() + " by "
                    + story.shortBy() + "\n   but " + foretold);
        }
    }

    /** One more evening, done as ordered and told truly, narrows what is foretold or leaves it. */
    private void neverWidens(Case plan, Foretold after) {
        Evening last = plan.evenings().get(plan.pastEvenings() - 1);
        if (!last.deeds().stream().allMatch(ActingOutLaws::isAsOrdered)) {
            return;
        }
        Foretold before = ClosedForm.of(plan.withPast(plan.pastEvenings() - 1));
        for (Entry entry : after.entries()) {
            if (before.entries().stream().noneMatch(wider -> wider.holds(entry))) {
                faults.add("seed " + plan.seed() + ": a true line of " + last.date() + " widens " + entry + "\n   from "
                        + before.entries());
            }
        }
        if (after.shortAtMost() > before.shortAtMost()) {
            faults.add("seed " + plan.seed() + ": a true line of " + last.date() + " shortens the supply");
        }
    }

    private static boolean isAsOrdered(Deed deed) {
        return deed.does() == Deed.Does.ALL && deed.lostBefore() + deed.lostWithin() + deed.lostAfter() == 0;
    }
}

package cyclepacket.actingout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.actingout.Foretold.Change;
import cyclepacket.actingout.Foretold.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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
    final Map<String, List<String>> faults = new TreeMap<>();
    private int acted;

    @Test
    void closedFormAgreesWithActingOut() {
        for (long seed = FIRST_SEED; seed < FIRST_SEED + PLANS; seed++) {
            compare(CaseMaker.make(seed));
        }
        System.out.println("acting out: seed " + FIRST_SEED + ", " + PLANS + " plans, " + acted + " worlds, " + tally);
        assertTrue(faults.isEmpty(), this::faultsInShort);
        assertEquals(List.of(), tally.missed(PLANS), "situations that too few plans met");
    }

    void compare(Case plan) {
        tally.count(plan, plan.live(plan.truth()));
        if (plan.hasPast()) {
            comparesWithARecord(plan);
        } else {
            comparesWithoutARecord(plan);
        }
    }

    private void fault(String kind, String text) {
        faults.computeIfAbsent(kind, first -> new ArrayList<>()).add(text);
    }

    String faultsInShort() {
        return faults.entrySet().stream()
                .map(kind -> kind.getKey() + " (" + kind.getValue().size() + ")\n"
                        + kind.getValue().stream().limit(3).collect(Collectors.joining("\n")))
                .collect(Collectors.joining("\n\n"));
    }

    private void comparesWithoutARecord(Case plan) {
        Foretold foretold = ClosedForm.of(plan);
        Foretold expected = Expected.of(plan);
        if (!foretold.equals(expected)) {
            fault("more or less than can be acted", "seed " + plan.seed() + "\n expected " + expected + "\n foretold " + foretold);
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
        return worlds.summingTo(boxes, plan.usedOf(1) + line.totalBefore(worlds.chance().from(1, line.turns())));
    }

    private void comparesWithARecord(Case plan) {
        Foretold foretold = ClosedForm.of(plan);
        if (!foretold.stops().isEmpty()) {
            if (foretold.stops().stream().allMatch(stop->stop.contains("READING_UNCLEAR"))) {
              if (ChainsTest.isPlain(plan) && !new Chains(plan).hasAStopOfTwoBoxes()) fault("asks in vain", "seed " + plan.seed() + ": " + foretold.stops());
              int before = faults.values().stream().mapToInt(List::size).sum();
              for (List<Long> contents : new OtherWorlds(plan, Chance.seeded(plan.seed())).found(WORLDS * 2)) compare(plan, foretold, contents);
              if (before != faults.values().stream().mapToInt(List::size).sum()) fault("UNCLEAR then wrong", "seed "+plan.seed());
              else fault("UNCLEAR fine", "seed "+plan.seed());
              return;
            }
            fault("refused", "seed " + plan.seed() + ": a true record is refused: " + foretold.stops());
            return;
        }
        if (ChainsTest.isPlain(plan)) {
            comparesWithAllChains(plan, foretold);
        }
        for (List<Long> contents : new OtherWorlds(plan, Chance.seeded(plan.seed())).found(WORLDS * 2)) {
            compare(plan, foretold, contents);
        }
        neverWidens(plan, foretold);
    }

    private void comparesWithAllChains(Case plan, Foretold foretold) {
        ExpectedOfRecord expected = new ExpectedOfRecord(plan);
        if (!expected.entries().equals(foretold.entries()) || !expected.changes().equals(foretold.changes())) {
            fault("chains", "seed " + plan.seed() + "\n expected " + expected.entries() + "\n foretold " + foretold.entries());
        }
    }

    private void compare(Case plan, Foretold foretold, List<Long> contents) {
        acted++;
        Story story = plan.live(contents);
        String where = "seed " + plan.seed() + ", contents " + contents + ": ";
        for (End end : story.ends()) {
            if (foretold.entries().stream().noneMatch(entry -> entry.holds(end))) {
                fault("not foretold", where + "not foretold: " + end + "\n   in " + foretold.entries());
            }
        }
        for (Entry entry : foretold.entries()) {
            boolean ends = story.endOf(entry.box()).map(End::date).equals(Optional.of(entry.date()));
            if (entry.certain() && !ends) {
                fault("not certain", where + "foretold as certain, not acted: " + entry);
            }
        }
        for (int box = 1; box <= plan.boxes().size(); box++) {
            compareChange(where, box, foretold.changeOf(box), story.endOf(box));
        }
        compareCover(plan, where, foretold, story);
    }

    private void compareChange(String where, int box, Optional<Change> change, Optional<End> end) {
        if (end.isPresent() && change.filter(it -> it.spans(end.get().date())).isEmpty()) {
            fault("outside change", where + end.get() + " outside " + change);
        }
        if (end.isEmpty() && change.flatMap(Change::latest).isPresent()) {
            fault("never ends", where + "box " + box + " never ends, foretold " + change);
        }
    }

    private void compareCover(Case plan, String where, Foretold foretold, Story story) {
        boolean surelyHolds = foretold.surelyUntil().isEmpty()
                || story.coveredUntil().filter(day -> !day.isBefore(foretold.surelyUntil().get())).isPresent();
        // A past evening of which nobody knows what was drawn counts as a whole dose, whatever was drawn.
        boolean possiblyHolds = story.coveredUntil().filter(day -> !plan.isPast(day)).isEmpty()
                || foretold.possiblyUntil().filter(day -> !day.isBefore(story.coveredUntil().get())).isPresent();
        boolean shortHolds = story.firstShort().isEmpty()
                || foretold.firstShort().filter(day -> !day.isAfter(story.firstShort().get())).isPresent();
        if (!surelyHolds || !possiblyHolds || !shortHolds || story.shortBy() > foretold.shortAtMost()) {
            fault("cover", where + "covered until " + story.coveredUntil() + ", short from " + story.firstShort() + " by "
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
                fault("widens", "seed " + plan.seed() + ": a true line of " + last.date() + " widens " + entry + "\n   from "
                        + before.entries());
            }
        }
        if (after.shortAtMost() > before.shortAtMost()) {
            fault("shortens", "seed " + plan.seed() + ": a true line of " + last.date() + " shortens the supply");
        }
    }

    private static boolean isAsOrdered(Deed deed) {
        return deed.does() == Deed.Does.ALL && deed.lostBefore() + deed.lostWithin() + deed.lostAfter() == 0;
    }
}

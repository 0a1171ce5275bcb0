package cyclepacket.actingout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.actingout.Foretold.Entry;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The closed form against the literal acting-out, over seeded random plans. {@code -Dcyclepacket.seed=n} starts at
 * another seed and {@code -Dcyclepacket.plans=n} takes another number of plans; a failure prints the seed of its plan.
 */
class ActingOutLaws {
    private static final long FIRST_SEED = Long.getLong("cyclepacket.seed", 20_270_305L);
    private static final int PLANS = Integer.getInteger("cyclepacket.plans", 10_000);
    private static final int WORLDS = 8;
    /** The stop that asks to which of two boxes a number belongs. */
    private static final String ASKS = "READING_UNCLEAR";

    private final Tally tally = new Tally();
    private final Faults faults = new Faults();
    private int acted;
    private int plain;
    private int exact;
    private int asked;
    private int askedInVain;

    @Test
    void closedFormAgreesWithActingOut() {
        for (long seed = FIRST_SEED; seed < FIRST_SEED + PLANS; seed++) {
            compare(CaseMaker.make(seed));
        }
        System.out.println("acting out: seed " + FIRST_SEED + ", " + PLANS + " plans, " + acted + " worlds, " + plain
                + " plain records of which " + exact + " exactly foretold, " + asked + " asked about a reading, "
                + askedInVain + " of them in vain, " + tally);
        assertTrue(faults.isEmpty(), faults::inShort);
        assertEquals(List.of(), tally.missed(PLANS), "situations that too few plans met");
        assertTrue(exact * 100L >= plain * 93L, exact + " of " + plain + " plain records are foretold exactly");
        assertTrue(asked * 100L <= PLANS * 3L, asked + " true records are asked about");
        assertTrue(askedInVain * 1000L <= PLANS * 3L, askedInVain + " of them in vain");
    }

    void compare(Case plan) {
        tally.count(plan, plan.live(plan.truth()));
        if (plan.hasPast()) {
            comparesWithARecord(plan);
        } else {
            comparesWithoutARecord(plan);
        }
    }

    Faults faults() {
        return faults;
    }

    private void comparesWithoutARecord(Case plan) {
        Foretold foretold = ClosedForm.of(plan);
        Foretold expected = Expected.of(plan);
        if (!foretold.withoutTrails().equals(expected)) {
            faults.add(
                    "more or less than can be acted",
                    "seed " + plan.seed() + "\n expected " + expected + "\n foretold " + foretold);
            return;
        }
        Worlds worlds = new Worlds(Chance.seeded(plan.seed()), plan.pen(), plan.boxes());
        Comparison comparison = new Comparison(plan, foretold, faults);
        comparison.reachesBothEndsOfTheTrails();
        for (List<Long> contents : List.of(plan.truth(), plan.allLeast(), plan.allMost())) {
            act(comparison, contents);
        }
        for (int world = 0; world < WORLDS; world++) {
            act(comparison, world % 2 == 0 ? endingWithAnInjection(plan, worlds) : worlds.any(world == 1));
        }
    }

    /** Contents with which some boxes together hold exactly what some injections take. */
    private static List<Long> endingWithAnInjection(Case plan, Worlds worlds) {
        int boxes = worlds.chance().from(1, plan.boxes().size());
        Timeline line = new Timeline(plan, 1);
        long drawn = line.totalBefore(worlds.chance().from(1, line.turns()));
        return worlds.summingTo(boxes, plan.usedOf(1) + drawn);
    }

    private void comparesWithARecord(Case plan) {
        Foretold foretold = ClosedForm.of(plan);
        if (foretold.stops().stream().anyMatch(stop -> stop.contains(ASKS))) {
            asked++;
            if (PlainRecord.is(plan) && !new Chains(plan).hasAStopOfTwoBoxes()) {
                askedInVain++;
            }
            return;
        }
        if (!foretold.stops().isEmpty()) {
            faults.add("refused", "seed " + plan.seed() + ": a true record is refused: " + foretold.stops());
            return;
        }
        if (PlainRecord.is(plan)) {
            comparesWithAllChains(plan, foretold);
        }
        Comparison comparison = new Comparison(plan, foretold, faults);
        for (List<Long> contents : new OtherWorlds(plan, Chance.seeded(plan.seed())).found(WORLDS * 2)) {
            act(comparison, contents);
        }
        neverWidens(plan, foretold);
        tellsThePast(plan, foretold);
    }

    /** Given, missed or partial, and how much, as it was in truth. */
    private void tellsThePast(Case plan, Foretold foretold) {
        List<Story.Act> acts = plan.live(plan.truth()).acts();
        for (Lived told : foretold.lived()) {
            List<Story.Act> evening =
                    acts.stream().filter(act -> act.date().equals(told.date())).toList();
            Lived real = Lived.really(told.date(), evening);
            if (!real.agreesWith(told)) {
                faults.add("past", "seed " + plan.seed() + ": " + told + " was " + real);
            }
        }
    }

    private void act(Comparison comparison, List<Long> contents) {
        acted++;
        comparison.with(contents);
    }

    private void comparesWithAllChains(Case plan, Foretold foretold) {
        ExpectedOfRecord expected = new ExpectedOfRecord(plan);
        for (Entry entry : expected.entries()) {
            if (foretold.entries().stream().noneMatch(wider -> wider.holds(entry))) {
                faults.add("misses a chain", "seed " + plan.seed() + ": " + entry + "\n   in " + foretold.entries());
            }
        }
        plain++;
        if (expected.entries().equals(foretold.entries()) && expected.changes().equals(foretold.changes())) {
            exact++;
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
                faults.add(
                        "widens",
                        "seed " + plan.seed() + ": a true line of " + last.date() + " widens " + entry + "\n   from "
                                + before.entries());
            }
        }
        if (after.shortAtMost() > before.shortAtMost()) {
            faults.add("widens", "seed " + plan.seed() + ": a true line of " + last.date() + " shortens the supply");
        }
    }

    private static boolean isAsOrdered(Deed deed) {
        return deed.does() == Deed.Does.ALL && deed.lostBefore() + deed.lostWithin() + deed.lostAfter() == 0;
    }
}

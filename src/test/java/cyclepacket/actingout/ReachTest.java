package cyclepacket.actingout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Shows that what is said to be possible can be acted, and that nothing else is ever acted. */
class ReachTest {
    private static final int PLANS = 1500;

    @Test
    void foretellsExactlyWhatIsActed() {
        int witnesses = 0;
        for (long seed = 0; seed < PLANS; seed++) {
            Case plan = CaseMaker.make(seed).withPast(0);
            Reach reach = new Reach(plan);
            Chance chance = Chance.seeded(seed);
            for (Reach.Possible end : reach.possibleEnds()) {
                witnesses += actsAs(plan, reach, end, end.totals().least(), chance);
                witnesses += actsAs(plan, reach, end, end.totals().most(), chance);
            }
            Worlds worlds = new Worlds(chance, plan.pen(), plan.boxes());
            for (int world = 0; world < 8; world++) {
                foretells(plan, reach, worlds.any(world < 4));
            }
        }
        assertTrue(witnesses > 3 * PLANS, witnesses + " acted ends");
    }

    private static int actsAs(Case plan, Reach reach, Reach.Possible end, long total, Chance chance) {
        List<Long> contents =
                new ArrayList<>(reach.contentsFor(end.box(), total, end.totals().thrownOn(), chance));
        for (Box box : plan.boxes().subList(end.box(), plan.boxes().size())) {
            contents.add(chance.from(box.least(), box.most()));
        }
        End acted = plan.live(contents).endOf(end.box()).orElseThrow();
        assertEquals(reach.endAt(end, total), withoutNumber(acted), "seed " + plan.seed());
        return 1;
    }

    private static void foretells(Case plan, Reach reach, List<Long> contents) {
        for (End acted : plan.live(contents).ends()) {
            boolean foretold = reach.possibleEnds().stream()
                    .anyMatch(end -> end.box() == acted.box() && spans(reach, end, withoutNumber(acted)));
            assertTrue(foretold, "seed " + plan.seed() + ": " + acted + " with " + contents);
        }
    }

    private static boolean spans(Reach reach, Reach.Possible end, End acted) {
        End most = reach.endAt(end, end.totals().least());
        End least = reach.endAt(end, end.totals().most());
        return withOwed(most, acted.owed()).equals(acted)
                && least.owed() <= acted.owed()
                && acted.owed() <= most.owed();
    }

    private static End withoutNumber(End end) {
        return new End(end.box(), end.date(), end.setting(), end.inUseLimit(), end.owed(), 0);
    }

    private static End withOwed(End end, long owed) {
        return new End(end.box(), end.date(), end.setting(), end.inUseLimit(), owed, 0);
    }
}

package cyclepacket.actingout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.actingout.Foretold.Change;
import cyclepacket.actingout.Foretold.Entry;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Shows that the chains hold every end that agrees with a record, and without a record just what can be acted. */
class ChainsTest {
    private static final int PLANS = 3000;

    @Test
    void holdEveryActedEndThatAgreesWithTheRecord() {
        int compared = 0;
        for (long seed = 0; seed < PLANS; seed++) {
            Case plan = CaseMaker.make(seed);
            if (plan.hasPast() && PlainRecord.is(plan)) {
                compared++;
                holds(plan);
            }
        }
        assertTrue(compared > PLANS / 5, compared + " records");
    }

    @Test
    void withoutARecordSayWhatCanBeActed() {
        for (long seed = 0; seed < PLANS; seed++) {
            Case plan = CaseMaker.make(seed).withPast(0);
            ExpectedOfRecord chained = new ExpectedOfRecord(plan);
            Foretold acted = Expected.of(plan);
            assertEquals(acted.entries(), chained.entries(), "seed " + seed);
            assertEquals(acted.changes(), chained.changes(), "seed " + seed);
        }
    }

    private static void holds(Case plan) {
        ExpectedOfRecord expected = new ExpectedOfRecord(plan);
        List<Entry> entries = expected.entries();
        List<Change> changes = expected.changes();
        for (List<Long> contents : new OtherWorlds(plan, Chance.seeded(plan.seed())).found(10)) {
            Story story = plan.live(contents);
            for (End end : story.ends()) {
                assertTrue(
                        entries.stream().anyMatch(entry -> entry.holds(end)),
                        () -> "seed " + plan.seed() + ": " + end + " not in " + entries);
            }
            for (Change change : changes) {
                boolean spans = story.endOf(change.box())
                        .map(end -> change.spans(end.date()))
                        .orElse(change.latest().isEmpty());
                assertTrue(spans, () -> "seed " + plan.seed() + ": " + change + " against " + story.ends());
            }
        }
    }
}

package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import cyclepacket.page.ChartTrailText.Change;
import cyclepacket.plan.PlanFiles;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every printed new-cartridge evening follows from the printed trail alone. */
class ChartTrailTest {
    private static final Comparator<Change> ORDER = Comparator.comparing(Change::date)
            .thenComparing(Change::leaving)
            .thenComparing(Change::injection)
            .thenComparing(Change::owed);

    private static final Set<String> MET = new TreeSet<>();

    private static List<ChartTrailText> trails(PlanFiles files) {
        return ChartTrailText.read(ChartSamples.pdf(ChartSamples.source(files)));
    }

    @TestFactory
    Stream<DynamicTest> followsFromItsOwnTextAlone() {
        Map<String, PlanFiles> plans = new LinkedHashMap<>();
        for (int issue = 1; issue <= 3; issue++) {
            plans.put("demo issue " + issue, ChartSamples.demo(issue));
        }
        plans.putAll(ChartOddPlans.all());
        return plans.entrySet().stream()
                .map(plan -> DynamicTest.dynamicTest(plan.getKey(), () -> follows(plan.getValue())));
    }

    private static void follows(PlanFiles files) {
        ChartTrailText trail = trails(files).get(0);
        ChartTrailAgain again = new ChartTrailAgain(trail);
        note(trail);
        assertEquals(sorted(trail.changes()), sorted(again.changes));
        assertEquals(
                trail.cartridges().stream()
                        .map(row -> row.earliest() + " " + row.latest())
                        .toList(),
                again.ends);
    }

    private static void note(ChartTrailText trail) {
        trail.changes().forEach(change -> MET.add(change.chance()));
        trail.changes().stream()
                .filter(change -> change.owed().equals("in-use limit"))
                .forEach(change -> MET.add("in-use limit"));
        for (ChartTrailText.Injection injection : trail.injections()) {
            met("split", injection.number() > 1);
            met("ran through", injection.ranThrough());
            met("unknown", injection.unknown() > 0);
            met("not confirmed", !injection.stops().isEmpty() && !injection.confirmed());
            met(
                    "ended more than once",
                    trail.changes().stream()
                                    .filter(change -> change.date().equals(injection.date()))
                                    .count()
                            > 1);
        }
        met("shows what is left", trail.showsLeft());
        met("nothing at home", trail.cartridges().isEmpty());
    }

    private static void met(String what, boolean isThere) {
        if (isThere) {
            MET.add(what);
        }
    }

    @AfterAll
    static void metEveryKindOfCase() {
        assertEquals(
                Set.of(
                        "certain",
                        "possible",
                        "recorded",
                        "in-use limit",
                        "split",
                        "ran through",
                        "unknown",
                        "not confirmed",
                        "ended more than once",
                        "shows what is left",
                        "nothing at home"),
                MET);
    }

    private static List<Change> sorted(List<Change> changes) {
        List<Change> sorted = new ArrayList<>(changes);
        sorted.sort(ORDER);
        return sorted;
    }

    @Test
    void printsTheEveningsOfTheFirstIssue() {
        List<String> printed = trails(ChartSamples.demo(1)).get(0).changes().stream()
                .map(change -> change.leaving() + " " + change.date() + " " + change.chance() + " " + change.owed())
                .toList();
        assertEquals(
                List.of(
                        "1 2027-03-08 certain 30 to 150",
                        "2 2027-03-13 possible above 0 to 187.5",
                        "2 2027-03-14 possible 120 to 187.5"),
                printed);
    }

    @Test
    void noticesANumberThatDoesNotFollow() {
        ChartTrailText trail = trails(ChartSamples.demo(1)).get(0);
        List<Change> wrong = new ArrayList<>(trail.changes());
        Change first = wrong.remove(0);
        wrong.add(
                new Change(first.leaving(), first.date().plusDays(1), first.injection(), first.chance(), first.owed()));
        assertFalse(sorted(wrong).equals(sorted(new ChartTrailAgain(trail).changes)));
    }
}

package cyclepacket.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.course.Course;
import cyclepacket.intake.PlanReader;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.plan.PlanFiles;
import cyclepacket.supply.BuyChoice;
import cyclepacket.supply.BuyChoices;
import cyclepacket.supply.Ratio;
import cyclepacket.supply.SupplyLine;
import cyclepacket.supply.SupplyPlan;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import org.junit.jupiter.api.Test;

/**
 * Shows that the odds and the left-over of the demo are plausible, and nothing more: no figure of these papers is printed
 * or counted with.
 *
 * <p>Sources, their abstracts: J Reprod Infertil 2021;22:116 (986 cycles: stimulation 9.9 days, standard deviation 1.8,
 * with 2,184 units, standard deviation 838); Eur J Obstet Gynecol Reprod Biol 2021;267:56 (309 women: a median of 825
 * units wasted).
 */
class StimulationLengthTest {
    private static SupplyLine demo() throws IOException {
        PlanFiles files = PlanReader.read(Path.of("plans/patients/SM-04417.yaml"))
                .files()
                .value()
                .orElseThrow();
        return SupplyPlan.of(files, CycleLedger.of(files, Course.of(files)))
                .of("fsh-pen")
                .orElseThrow();
    }

    private static Ratio mean(BuyChoices choices) {
        return choices.odds().weights().keySet().stream()
                .map(days -> choices.odds().of(days).times(days))
                .reduce(Ratio.ZERO, Ratio::plus);
    }

    private static void assertBetween(Ratio least, Ratio value, Ratio most) {
        assertTrue(least.compareTo(value) <= 0 && value.compareTo(most) <= 0, value.toString());
    }

    @Test
    void takesAsManyEveningsAsCyclesDo() throws IOException {
        Ratio mean = mean(demo().choices().orElseThrow());
        assertEquals(Ratio.of(21, 2), mean);
        assertBetween(Ratio.of(81, 10), mean, Ratio.of(117, 10));
    }

    @Test
    void takesAsManyUnitsAsCyclesDo() throws IOException {
        Ratio units = mean(demo().choices().orElseThrow()).times(Ratio.of(375, 2));
        assertBetween(Ratio.of(2184 - 838, 1), units, Ratio.of(2184 + 838, 1));
    }

    /** With everything bought at once the demo leaves some 730 units over, in the order of the median that was found. */
    @Test
    void leavesAsMuchOverAsWomenDo() throws IOException {
        BuyChoice all = demo().choices().orElseThrow().all().stream()
                .max(Comparator.comparing(choice -> choice.now().labelled()))
                .orElseThrow();
        assertBetween(Ratio.of(825_000, 2), all.waste(), Ratio.of(825_000 * 2, 1));
    }
}

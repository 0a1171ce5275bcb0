package cyclepacket.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.PlanSketch;
import cyclepacket.course.Course;
import cyclepacket.finding.Severity;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.supply.SupplyPlan;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the rules say of the demo, and what every rule has in common. */
class SafetyCheckTest {
    @Test
    void warnsOfShortSuppliesInTheFirstIssue() throws IOException {
        assertEquals(
                List.of("WARN SUPPLY-SHORT /on-hand/fsh-pen", "WARN SUPPLY-SHORT /on-hand/antagonist-syringe"),
                weighty("patients/SM-04417.yaml"));
    }

    /** The trigger is planned for the 13th and not called, so both have to last until the 17th. */
    @Test
    void warnsOfWhatToOrderBeforeTheVisitInTheSecondIssue() throws IOException {
        assertEquals(
                List.of(
                        "WARN SUPPLY-ORDER-BEFORE-VISIT /on-hand/fsh-pen",
                        "WARN SUPPLY-SHORT /on-hand/fsh-pen",
                        "WARN SUPPLY-ORDER-BEFORE-VISIT /on-hand/antagonist-syringe",
                        "WARN SUPPLY-SHORT /on-hand/antagonist-syringe"),
                weighty("patients/SM-04417-issue-2.yaml"));
    }

    @Test
    void leavesNothingOpenInTheThirdIssue() throws IOException {
        assertEquals(List.of(), weighty("patients/SM-04417-issue-3.yaml"));
    }

    /** Sums may be far larger than any amount of a file, so that the rules always get to speak. */
    @Test
    void sumsTheLargestAmountsOfAFile() {
        PlanSketch sketch =
                new PlanSketch().size("1000000", "1000000", "1000000").dose(1, "1000000");
        sketch.days = 60;
        sketch.least = "1000";
        sketch.step = "1000";
        sketch.most = "1000000";
        sketch.stock.add(new Plan.Stock(
                PlanSketch.units("1000000"),
                200,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        PlanFiles files = sketch.files();
        Course course = Course.of(files);
        CycleLedger ledger = CycleLedger.of(files, course);
        MedicineLedger pen = ledger.of(PlanSketch.PEN).orElseThrow();
        assertEquals(PlanSketch.units("60000000"), pen.draws().get(59).after());
        assertEquals(
                List.of("MISSED-LINE-ABSENT"),
                SafetyCheck.of(files, course, ledger, SupplyPlan.of(files, ledger)).stream()
                        .filter(finding -> finding.isStop())
                        .map(finding -> finding.code())
                        .distinct()
                        .sorted()
                        .toList());
    }

    /** A line that is missing has no number of its own, and a place that no file has could not be looked up. */
    @Test
    void putsAMissingLineAtTheWholeRecord() {
        PlanSketch sketch =
                new PlanSketch().size("900", "900", "900").home("900").dose(1, "150");
        sketch.issue = 2;
        sketch.prepared = sketch.night(2);
        PlanFiles files = sketch.files();
        Course course = Course.of(files);
        CycleLedger ledger = CycleLedger.of(files, course);
        assertEquals(
                List.of("/record"),
                SafetyCheck.of(files, course, ledger, SupplyPlan.of(files, ledger)).stream()
                        .filter(finding -> finding.code().equals("RECORD-GAP"))
                        .map(finding -> finding.place().pointer())
                        .toList());
    }

    @Test
    void namesEveryRuleByItsCode() {
        Set<String> codes = new HashSet<>();
        SafetyCheck.rules().forEach(rule -> {
            String name = rule.getClass().getSimpleName().replaceAll("Rule$", "");
            assertEquals(name.replaceAll("(?<=.)(?=[A-Z])", "-").toUpperCase(Locale.ROOT), rule.code());
            assertTrue(codes.add(rule.code()), rule.code());
        });
    }

    @Test
    void keepsLedgerAndSuppliesForStopsThatLeaveTheSumsAlone() {
        assertTrue(SafetyCheck.touchesSums("DOSE-OFF-DIAL"));
        assertTrue(SafetyCheck.touchesSums("RECORD-GAP"));
        assertFalse(SafetyCheck.touchesSums("APPROVAL-ENDED"));
        assertFalse(SafetyCheck.touchesSums("IDENTIFIERS"));
        assertTrue(SafetyCheck.touchesSums("NOT-A-RULE-HERE"));
    }

    private static List<String> weighty(String plan) throws IOException {
        return EditedDemo.unchanged(plan).findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .map(finding -> finding.severity() + " " + finding.code() + " "
                        + finding.place().pointer())
                .toList();
    }
}

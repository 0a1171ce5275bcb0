package cyclepacket.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Severity;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
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

    @Test
    void warnsOfThePenToOrderBeforeTheVisitInTheSecondIssue() throws IOException {
        assertEquals(
                List.of("WARN SUPPLY-ORDER-BEFORE-VISIT /on-hand/fsh-pen", "WARN SUPPLY-SHORT /on-hand/fsh-pen"),
                weighty("patients/SM-04417-issue-2.yaml"));
    }

    @Test
    void leavesNothingOpenInTheThirdIssue() throws IOException {
        assertEquals(List.of(), weighty("patients/SM-04417-issue-3.yaml"));
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

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.util.List;
import java.util.Map;

/** What to do after a missed dose is the clinic's to write, for every medicine of the plan. */
final class MissedLineAbsentRule extends Rule {
    MissedLineAbsentRule() {
        super("MISSED-LINE-ABSENT", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        Map<String, String> missed = plan.clinic().rules().missed();
        return plan.files().medicines().keySet().stream()
                .filter(medicine -> missed.getOrDefault(medicine, "").isBlank())
                .map(medicine -> stop(
                        plan.inClinic("/house-rules/missed"),
                        "the clinic file does not say what to do after a missed dose of " + medicine,
                        "write the line, approved by those who approve the file"))
                .toList();
    }
}

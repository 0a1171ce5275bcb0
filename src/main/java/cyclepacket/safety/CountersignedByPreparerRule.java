package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.util.List;

/**
 * The second person works alone and is another one than the preparer. The independent double check, with two people, is
 * described by the Institute for Safe Medication Practices (2003, 2019).
 */
final class CountersignedByPreparerRule extends Rule {
    CountersignedByPreparerRule() {
        super("COUNTERSIGNED-BY-PREPARER", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        String preparer = Phrases.plain(plan.plan().prepared().by());
        return plan.plan().countersigned().stream()
                .filter(second -> Phrases.plain(second.by()).equals(preparer))
                .map(second -> stop(
                        plan.inPlan("/countersigned/by"),
                        "the packet is countersigned by the person who prepared it",
                        "have a second person key the values in"))
                .toList();
    }
}

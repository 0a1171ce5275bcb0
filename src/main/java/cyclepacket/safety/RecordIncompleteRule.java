package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** A line that does not say what reached the patient. */
final class RecordIncompleteRule extends RecordDoubtRule {
    RecordIncompleteRule() {
        super(
                "RECORD-INCOMPLETE",
                Sums.TOUCHED,
                Set.of(RecordDoubt.Kind.SAYS_NOTHING, RecordDoubt.Kind.WINDOW_WITHOUT_GIVEN));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        boolean hasStopped = doubt.kind() == RecordDoubt.Kind.WINDOW_WITHOUT_GIVEN;
        return stop(
                place(plan, doubt),
                hasStopped
                        ? "the pen stopped, and the line does not say how much was given in all"
                        : "the line does not say how much was given",
                "write given with old and new container together, given: unknown, or missed: true");
    }
}

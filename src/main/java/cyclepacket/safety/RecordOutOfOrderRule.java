package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** Lines stand oldest first, because the containers were emptied in that order. */
final class RecordOutOfOrderRule extends RecordDoubtRule {
    RecordOutOfOrderRule() {
        super("RECORD-OUT-OF-ORDER", Sums.UNTOUCHED, Set.of(RecordDoubt.Kind.OUT_OF_ORDER));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        return stop(
                place(plan, doubt),
                "the line of " + doubt.subject() + " stands after a later one of " + medicine.id(),
                "put the lines in order, oldest first, or mend the date");
    }
}

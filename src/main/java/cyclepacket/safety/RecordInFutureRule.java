package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** An evening that is not over yet cannot be in the record. */
final class RecordInFutureRule extends RecordDoubtRule {
    RecordInFutureRule() {
        super("RECORD-IN-FUTURE", Sums.TOUCHED, Set.of(RecordDoubt.Kind.IN_FUTURE));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        return stop(
                place(plan, doubt),
                "the line of " + doubt.subject() + " is later than the day the packet was prepared, "
                        + plan.preparedOn(),
                "mend the date of the line, or the day under prepared");
    }
}

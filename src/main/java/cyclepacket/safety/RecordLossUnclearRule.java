package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** A loss on the line of a stop: nobody can tell from which container it went. */
final class RecordLossUnclearRule extends RecordDoubtRule {
    RecordLossUnclearRule() {
        super("RECORD-LOSS-UNCLEAR", Sums.TOUCHED, Set.of(RecordDoubt.Kind.LOSS_WITH_STOP));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        return stopUntilExplained(
                plan,
                doubt,
                doubt.subject() + " lost on a line where the pen stopped: from the old or the new container",
                "write the loss on a line of its own, before the stop if the old container lost it, else after it");
    }
}

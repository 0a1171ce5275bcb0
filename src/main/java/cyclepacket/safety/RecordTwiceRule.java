package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** Two lines for one injection. */
final class RecordTwiceRule extends RecordDoubtRule {
    RecordTwiceRule() {
        super("RECORD-TWICE", Sums.TOUCHED, Set.of(RecordDoubt.Kind.TWICE));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        return stopUntilExplained(
                plan,
                doubt,
                "a second line for one injection of " + medicine.id() + ", " + doubt.subject(),
                "take one out, or number the second one with setting: 2");
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** A number that can belong to two cartridges, because an earlier evening does not say whether the pen stopped. */
final class RecordReadingUnclearRule extends RecordDoubtRule {
    RecordReadingUnclearRule() {
        super("RECORD-READING-UNCLEAR", Sums.TOUCHED, Set.of(RecordDoubt.Kind.READING_UNCLEAR));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        return stop(
                place(plan, doubt),
                "this number of " + medicine.id() + " can belong to " + doubt.subject(),
                "ask which box was in the pen, and write the window of the earlier evenings: 0 where the pen ran through");
    }
}

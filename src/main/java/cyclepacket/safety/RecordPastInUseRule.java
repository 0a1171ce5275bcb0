package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** A container was used after its in-use days; it happened, so the prescriber and the pharmacist must know. */
final class RecordPastInUseRule extends RecordDoubtRule {
    RecordPastInUseRule() {
        super("RECORD-PAST-IN-USE", Sums.UNTOUCHED, Set.of(RecordDoubt.Kind.PAST_IN_USE));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        String text = medicine.id() + ": " + doubt.subject() + " was used after its in-use days";
        if (doubt.isExplained()) {
            return note(place(plan, doubt), text, "a reason and a name stand beside it");
        }
        return warn(place(plan, doubt), text, "tell the prescriber and the pharmacist");
    }
}

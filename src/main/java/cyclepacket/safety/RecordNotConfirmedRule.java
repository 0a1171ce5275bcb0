package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** A number that nobody read back counts as a range, and the packet says so. */
final class RecordNotConfirmedRule extends RecordDoubtRule {
    RecordNotConfirmedRule() {
        super("RECORD-NOT-CONFIRMED", Sums.UNTOUCHED, Set.of(RecordDoubt.Kind.NOT_CONFIRMED));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        return note(
                place(plan, doubt),
                "not confirmed: the window number " + doubt.subject() + " of " + medicine.id() + " was not read back",
                "have it read aloud and repeat it, then write read-back: true");
    }
}

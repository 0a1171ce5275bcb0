package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** More containers ended than are at home. */
final class RecordNoContainerRule extends RecordDoubtRule {
    RecordNoContainerRule() {
        super("RECORD-NO-CONTAINER", Sums.TOUCHED, Set.of(RecordDoubt.Kind.NO_CONTAINER_LEFT));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        return stopUntilExplained(
                plan,
                doubt,
                "a container of " + medicine.id() + " ended on " + doubt.subject() + ", and on-hand has none for it",
                "write every container under on-hand, the used ones too, in the order they were loaded");
    }
}

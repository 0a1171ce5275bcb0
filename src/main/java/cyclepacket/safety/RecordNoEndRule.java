package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** More was drawn without a stop than the container can hold. */
final class RecordNoEndRule extends RecordDoubtRule {
    RecordNoEndRule() {
        super("RECORD-NO-END", Sums.TOUCHED, Set.of(RecordDoubt.Kind.NO_END_WRITTEN));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        return stopUntilExplained(
                plan,
                doubt,
                doubt.subject() + " of " + medicine.id() + " without a stop is more than the container holds",
                "a new cartridge was started and nobody wrote it down; or an evening was skipped, less was dialled, "
                        + "or the cartridge is a larger one");
    }
}

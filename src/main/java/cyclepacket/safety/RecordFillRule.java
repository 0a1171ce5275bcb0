package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** A number in the window that means a fill this size cannot have. */
final class RecordFillRule extends RecordDoubtRule {
    RecordFillRule() {
        super("RECORD-FILL", Sums.TOUCHED, Set.of(RecordDoubt.Kind.FILL_IMPOSSIBLE));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        return stopUntilExplained(
                plan,
                doubt,
                "this number means an impossible fill: " + doubt.subject(),
                "likely reasons: a smaller or larger cartridge, a double or skipped dose, a leak, long priming, "
                        + "a blocked needle");
    }
}

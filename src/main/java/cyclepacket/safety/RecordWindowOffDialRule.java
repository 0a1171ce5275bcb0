package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** A number in the window that this device cannot show. */
final class RecordWindowOffDialRule extends RecordDoubtRule {
    RecordWindowOffDialRule() {
        super("RECORD-WINDOW-OFF-DIAL", Sums.TOUCHED, Set.of(RecordDoubt.Kind.WINDOW_OFF_DIAL));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        boolean isPen = medicine.device().pen().isPresent();
        return stopUntilExplained(
                plan,
                doubt,
                isPen
                        ? "the window of this pen cannot show " + doubt.subject()
                        : "a ready syringe has no window, and the line says " + doubt.subject(),
                isPen ? "ask the patient to read the number again" : "take window out");
    }
}

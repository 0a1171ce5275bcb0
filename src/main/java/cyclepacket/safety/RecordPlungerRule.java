package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** The whole setting is left and nobody looked at the plunger: the needle may have been blocked. */
final class RecordPlungerRule extends RecordDoubtRule {
    RecordPlungerRule() {
        super("RECORD-PLUNGER", Sums.TOUCHED, Set.of(RecordDoubt.Kind.PLUNGER_NOT_SEEN));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        return stopUntilExplained(
                plan,
                doubt,
                "the window showed the whole " + doubt.subject() + ", and nobody says where the plunger stood",
                "ask the patient: at the very end, write plunger: end, the cartridge is empty; else write plunger: not-end, "
                        + "the needle was blocked");
    }
}

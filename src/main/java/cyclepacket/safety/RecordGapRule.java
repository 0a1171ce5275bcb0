package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** From issue 2 on every past evening has a line. */
final class RecordGapRule extends RecordDoubtRule {
    RecordGapRule() {
        super("RECORD-GAP", Sums.TOUCHED, Set.of(RecordDoubt.Kind.GAP));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        return stop(
                place(plan, doubt),
                "no line says what happened with " + medicine.id() + " on " + doubt.subject(),
                "ask the patient and write given, missed: true, or given: unknown");
    }
}

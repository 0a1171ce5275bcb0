package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/**
 * From issue 2 on every past evening has a line. The page that ends a cycle does not wait for one: whoever must stop
 * tonight is told tonight.
 */
final class RecordGapRule extends RecordDoubtRule {
    RecordGapRule() {
        super("RECORD-GAP", Sums.TOUCHED, Set.of(RecordDoubt.Kind.GAP));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        String text = "no line says what happened with " + medicine.id() + " on " + doubt.subject();
        if (plan.course().cancelledFrom().isPresent()) {
            return note(place(plan, doubt), text, "write it before the plan of the cancelled cycle is put away");
        }
        return stop(place(plan, doubt), text, "ask the patient and write given, missed: true, or given: unknown");
    }
}

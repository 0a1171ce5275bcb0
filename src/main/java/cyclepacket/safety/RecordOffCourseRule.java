package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** An injection on an evening, or of a number, that the plan does not order. */
final class RecordOffCourseRule extends RecordDoubtRule {
    RecordOffCourseRule() {
        super("RECORD-OFF-COURSE", Sums.TOUCHED, Set.of(RecordDoubt.Kind.OFF_COURSE));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        return stopUntilExplained(
                plan,
                doubt,
                "the plan orders no such injection of " + medicine.id() + ": " + doubt.subject(),
                "check the date, and tell the prescriber if it was really given");
    }
}

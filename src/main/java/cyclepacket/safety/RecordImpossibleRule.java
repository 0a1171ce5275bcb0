package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.Set;

/** Amounts of one line that cannot all be true. */
final class RecordImpossibleRule extends RecordDoubtRule {
    RecordImpossibleRule() {
        super(
                "RECORD-IMPOSSIBLE",
                Sums.TOUCHED,
                Set.of(
                        RecordDoubt.Kind.GIVEN_ABOVE_DIALLED,
                        RecordDoubt.Kind.GIVEN_BELOW_OLD,
                        RecordDoubt.Kind.WINDOW_ABOVE_DIALLED));
    }

    @Override
    Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt) {
        return stopUntilExplained(
                plan,
                doubt,
                text(doubt),
                "ask the patient what was dialled, what the window showed and what was given");
    }

    private static String text(RecordDoubt doubt) {
        String what = switch (doubt.kind()) {
            case GIVEN_ABOVE_DIALLED -> "more was given than was dialled: ";
            case GIVEN_BELOW_OLD -> "less was given than came out: ";
            default -> "the window cannot show so much: ";
        };
        return what + doubt.subject();
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** A rule over what the ledger found doubtful in the record; the words are the rule's own. */
abstract class RecordDoubtRule extends Rule {
    private static final Set<RecordDoubt.Kind> FROM_SUMS = EnumSet.of(
            RecordDoubt.Kind.FILL_IMPOSSIBLE,
            RecordDoubt.Kind.READING_UNCLEAR,
            RecordDoubt.Kind.NO_END_WRITTEN,
            RecordDoubt.Kind.NO_CONTAINER_LEFT,
            RecordDoubt.Kind.PAST_IN_USE);

    private final Set<RecordDoubt.Kind> kinds;

    RecordDoubtRule(String code, Sums sums, Set<RecordDoubt.Kind> kinds) {
        super(code, sums);
        this.kinds = Set.copyOf(kinds);
    }

    @Override
    final List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (MedicineLedger ledger : plan.ledger().medicines()) {
            ledger.doubts().stream()
                    .filter(doubt -> kinds.contains(doubt.kind()))
                    .filter(doubt -> !isFollowUp(doubt, ledger.doubts()))
                    .map(doubt -> finding(plan, ledger.medicine(), doubt))
                    .forEach(found::add);
        }
        return found;
    }

    /**
     * Whether the sums only stumble over a line that is stopped for its evening already. An explained line is a fact: what
     * follows from it counts.
     */
    private static boolean isFollowUp(RecordDoubt doubt, List<RecordDoubt> all) {
        return FROM_SUMS.contains(doubt.kind())
                && all.stream().filter(other -> other.line() == doubt.line()).anyMatch(RecordDoubtRule::isWrongEvening);
    }

    private static boolean isWrongEvening(RecordDoubt doubt) {
        return doubt.kind() == RecordDoubt.Kind.IN_FUTURE
                || (doubt.kind() == RecordDoubt.Kind.OFF_COURSE && !doubt.isExplained());
    }

    abstract Finding finding(ComputedPlan plan, Medicine medicine, RecordDoubt doubt);

    static Place place(ComputedPlan plan, RecordDoubt doubt) {
        return plan.inPlan(doubt.line() < 0 ? "/record" : "/record/" + doubt.line());
    }

    /**
     * What cannot be so is still written, so that nobody falsifies a fact; it stops the packet until a reason and a name
     * stand beside it.
     */
    final Finding stopUntilExplained(ComputedPlan plan, RecordDoubt doubt, String text, String mend) {
        if (doubt.isExplained()) {
            return note(place(plan, doubt), text, "a reason and a name stand beside it");
        }
        return stop(
                place(plan, doubt),
                text,
                mend + "; if it stands, write reason and by on the line, never a changed fact");
    }
}

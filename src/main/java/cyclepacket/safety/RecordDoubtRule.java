package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Medicine;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A rule over what the ledger found doubtful in the record; the words are the rule's own. */
abstract class RecordDoubtRule extends Rule {
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
                    .map(doubt -> finding(plan, ledger.medicine(), doubt))
                    .forEach(found::add);
        }
        return found;
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

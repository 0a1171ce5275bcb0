package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Medicine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A container that will be left with medicine inside, because its in-use days are over. */
final class InUseLossRule extends Rule {
    InUseLossRule() {
        super("IN-USE-LOSS", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (MedicineLedger ledger : plan.ledger().medicines()) {
            Set<Integer> told = new HashSet<>();
            for (LedgerDay day : ledger.days()) {
                day.changes().stream()
                        .filter(change -> change.cause() == DayChange.Cause.IN_USE_LIMIT)
                        .filter(change -> told.add(change.leaving()))
                        .map(change ->
                                finding(plan, ledger.medicine(), day.evening().date(), change))
                        .forEach(found::add);
            }
        }
        return found;
    }

    private Finding finding(ComputedPlan plan, Medicine medicine, LocalDate date, DayChange change) {
        return note(
                plan.inPlan("/on-hand/" + medicine.id()),
                "container " + change.leaving() + " of " + medicine.id() + " may be left on " + Phrases.day(date)
                        + " with medicine inside: its in-use days are over",
                "tell the patient; smaller containers would lose less");
    }
}

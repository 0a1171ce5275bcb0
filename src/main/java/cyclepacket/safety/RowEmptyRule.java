package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Protocol;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A row that ends before it starts gives no dose at all, for example when the trigger comes early. */
final class RowEmptyRule extends Rule {
    RowEmptyRule() {
        super("ROW-EMPTY", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        List<Protocol.Row> rows = plan.protocol().rows();
        for (int index = 0; index < rows.size(); index++) {
            Protocol.Row row = rows.get(index);
            Optional<LocalDate> first = plan.course().anchors().latestDate(row.firstDay());
            Optional<LocalDate> last = plan.course().anchors().latestDate(row.lastDay());
            if (first.isPresent() && last.isPresent() && last.get().isBefore(first.get())) {
                found.add(warn(
                        plan.inProtocol("/rows/" + index),
                        row.medicine() + " would start on " + Phrases.day(first.get()) + " and end on "
                                + Phrases.day(last.get()) + ", so no dose of it is printed",
                        "ask the prescriber whether it is meant to be left out"));
            }
        }
        return found;
    }
}

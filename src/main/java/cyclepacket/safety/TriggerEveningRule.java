package cyclepacket.safety;

import cyclepacket.course.Anchors;
import cyclepacket.finding.Finding;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.DayMark;
import cyclepacket.plan.Protocol;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The clinic gives none of a medicine on the evening of the trigger, and the protocol's row reaches that evening. */
final class TriggerEveningRule extends Rule {
    private static final String NONE = "none";

    TriggerEveningRule() {
        super("TRIGGER-EVENING", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        List<Protocol.Row> rows = plan.protocol().rows();
        for (int index = 0; index < rows.size(); index++) {
            Protocol.Row row = rows.get(index);
            boolean isNone = NONE.equals(plan.clinic().rules().triggerEvening().get(row.medicine()));
            if (isNone
                    && !isWaiting(plan, index)
                    && reachesTrigger(plan.course().anchors(), row)) {
                found.add(stop(
                        plan.inProtocol("/rows/" + index + "/until"),
                        "the clinic gives no " + row.medicine()
                                + " on the evening of the trigger, and this row gives it",
                        "end the row on T-1, or mend trigger-evening in the clinic file"));
            }
        }
        return found;
    }

    /** A row without days reaches no evening yet. */
    private static boolean isWaiting(ComputedPlan plan, int row) {
        return plan.course().waiting().stream().anyMatch(waiting -> waiting.row() == row);
    }

    private static boolean reachesTrigger(Anchors anchors, Protocol.Row row) {
        Optional<LocalDate> first = anchors.latestDate(row.firstDay());
        Optional<LocalDate> last = anchors.latestDate(row.lastDay());
        Optional<LocalDate> evening = anchors.latestDate(new DayMark.FromAnchor(Anchor.T, 0));
        return evening.isPresent()
                && first.filter(day -> !day.isAfter(evening.get())).isPresent()
                && last.filter(day -> !day.isBefore(evening.get())).isPresent();
    }
}

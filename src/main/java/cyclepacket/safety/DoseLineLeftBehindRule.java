package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.DayMark;
import cyclepacket.plan.Plan;
import java.time.LocalDate;
import java.util.List;

/** The start was told twice with different dates, and a dose line with a bare date may not have moved with it. */
final class DoseLineLeftBehindRule extends Rule {
    DoseLineLeftBehindRule() {
        super("DOSE-LINE-LEFT-BEHIND", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Plan.Call> starts = plan.plan().called().stream()
                .filter(call -> call.anchor().equals(plan.course().start()))
                .toList();
        boolean hasMoved =
                starts.stream().map(call -> call.at().date()).distinct().count() > 1;
        if (!hasMoved) {
            return List.of();
        }
        LocalDate movedOn = starts.get(starts.size() - 1).on();
        return DatedLine.all(plan).stream()
                .filter(line -> line.line().from() instanceof DayMark.Dated)
                .filter(line ->
                        !isOrderedAfter(movedOn, line.line(), plan.plan().order()))
                .map(line -> warn(
                        line.place(plan),
                        "the start was moved on " + Phrases.day(movedOn) + ", and this dose line still says "
                                + Phrases.day(line.from()),
                        "check with the order whether it moves too; an anchor such as S5 moves by itself"))
                .toList();
    }

    /** A line of the order in force, written after the move, was meant for the new dates. */
    private static boolean isOrderedAfter(LocalDate movedOn, Plan.DoseLine line, Plan.Order order) {
        return line.order().isPresent()
                && line.order().equals(order.reference())
                && !order.date().isBefore(movedOn);
    }
}

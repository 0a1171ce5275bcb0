package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.time.LocalDate;
import java.util.List;

/** An order that is dated after the packet that follows it. */
final class OrderDateLateRule extends Rule {
    OrderDateLateRule() {
        super("ORDER-DATE-LATE", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        LocalDate ordered = plan.plan().order().date();
        if (!ordered.isAfter(plan.preparedOn())) {
            return List.of();
        }
        return List.of(warn(
                plan.inPlan("/order/date"),
                "the order is dated " + Phrases.day(ordered) + ", after the packet was prepared on "
                        + Phrases.day(plan.preparedOn()),
                "read the order's date again, and the day under prepared"));
    }
}

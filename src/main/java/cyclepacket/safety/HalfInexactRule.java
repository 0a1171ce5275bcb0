package cyclepacket.safety;

import cyclepacket.course.CourseDoubt;
import cyclepacket.finding.Finding;
import java.util.List;

/** A row is halved, and half of its amount has too many decimals. */
final class HalfInexactRule extends Rule {
    HalfInexactRule() {
        super("HALF-INEXACT", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return plan.doubts(CourseDoubt.Kind.HALF_INEXACT).stream()
                .map(doubt -> stop(
                        plan.placeOf(doubt),
                        "half of the amount of " + doubt.subject() + " has more than three decimals",
                        "write the lower amount as a dose line of its own"))
                .toList();
    }
}

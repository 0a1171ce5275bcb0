package cyclepacket.safety;

import cyclepacket.course.CourseDoubt;
import cyclepacket.finding.Finding;
import java.util.List;

/** Retrieval and trigger need an hour: a date alone cannot be counted back from. */
final class HourAbsentRule extends Rule {
    HourAbsentRule() {
        super("HOUR-ABSENT", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return plan.doubts(CourseDoubt.Kind.HOUR_ABSENT).stream()
                .map(doubt -> stop(
                        plan.placeOf(doubt),
                        doubt.subject() + " has a date and no hour",
                        "write date and hour, for example " + doubt.subject() + ": \"2027-03-15T08:30\""))
                .toList();
    }
}

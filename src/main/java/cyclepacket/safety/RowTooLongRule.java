package cyclepacket.safety;

import cyclepacket.course.CourseDoubt;
import cyclepacket.finding.Finding;
import cyclepacket.plan.DayMark;
import java.util.List;

/** A row that goes on for more than a year: a date in the wrong year. */
final class RowTooLongRule extends Rule {
    RowTooLongRule() {
        super("ROW-TOO-LONG", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return plan.doubts(CourseDoubt.Kind.ROW_TOO_LONG).stream()
                .map(doubt -> stop(
                        plan.placeOf(doubt),
                        "with these dates the course would give " + doubt.subject() + ", more than "
                                + DayMark.FromAnchor.MOST_DAYS + " days after it starts",
                        "check the year of each date"))
                .toList();
    }
}

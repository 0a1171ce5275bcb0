package cyclepacket.safety;

import cyclepacket.course.CourseDoubt;
import cyclepacket.finding.Finding;
import java.util.List;

/** A row at an exact time hangs on T, or on an anchor that the protocol counts to the minute. */
final class ExactWithoutTriggerRule extends Rule {
    ExactWithoutTriggerRule() {
        super("EXACT-WITHOUT-TRIGGER", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return plan.doubts(CourseDoubt.Kind.EXACT_WITHOUT_TRIGGER).stream()
                .map(doubt -> stop(
                        plan.placeOf(doubt),
                        "an exact time is known for T only, and this row is on " + doubt.subject(),
                        "write on: T, or name one of the plan's times"))
                .toList();
    }
}

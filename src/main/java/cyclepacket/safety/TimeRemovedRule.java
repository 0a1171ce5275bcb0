package cyclepacket.safety;

import cyclepacket.course.CourseDoubt;
import cyclepacket.course.LocalTimes;
import cyclepacket.finding.Finding;
import java.util.List;

/** A local time that a clock change skips. */
final class TimeRemovedRule extends Rule {
    TimeRemovedRule() {
        super("TIME-REMOVED", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return DoubtfulTime.all(plan, CourseDoubt.Kind.TIME_REMOVED, LocalTimes.Shown.NEVER).stream()
                .map(time -> stop(
                        time.place(),
                        time.words() + " does not exist: the clocks are put forward over it",
                        "ask which hour is meant and write one that the clock shows"))
                .toList();
    }
}

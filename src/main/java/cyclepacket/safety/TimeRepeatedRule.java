package cyclepacket.safety;

import cyclepacket.course.CourseDoubt;
import cyclepacket.course.LocalTimes;
import cyclepacket.finding.Finding;
import java.time.ZoneOffset;
import java.util.List;

/** A local time that a clock change shows twice, with nothing to say which is meant. */
final class TimeRepeatedRule extends Rule {
    TimeRepeatedRule() {
        super("TIME-REPEATED", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return DoubtfulTime.all(plan, CourseDoubt.Kind.TIME_REPEATED, LocalTimes.Shown.TWICE).stream()
                .map(time -> stop(
                        time.place(),
                        time.words() + " happens twice: the clocks are put back over it",
                        time.takesOffset() ? withOffset(time) : "choose an hour that happens once"))
                .toList();
    }

    private static String withOffset(DoubtfulTime time) {
        List<ZoneOffset> offsets = time.zone().getRules().getValidOffsets(time.local());
        return "write the offset too: " + time.local() + offsets.get(0) + " is the first, " + time.local()
                + offsets.get(1) + " the second";
    }
}

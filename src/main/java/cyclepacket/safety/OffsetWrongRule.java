package cyclepacket.safety;

import cyclepacket.course.CourseDoubt;
import cyclepacket.finding.Finding;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;

/** An offset beside a time that its zone does not have then. */
final class OffsetWrongRule extends Rule {
    OffsetWrongRule() {
        super("OFFSET-WRONG", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return plan.doubts(CourseDoubt.Kind.OFFSET_WRONG).stream()
                .map(doubt -> stop(plan.placeOf(doubt), "the offset does not fit " + doubt.subject(), mend(doubt)))
                .toList();
    }

    private static String mend(CourseDoubt doubt) {
        String[] parts = doubt.subject().split(" in ", 2);
        ZoneOffset right = ZoneId.of(parts[1]).getRules().getOffset(LocalDateTime.parse(parts[0]));
        return "leave the offset out, or write " + right + " if the hour is right";
    }
}

package cyclepacket.safety;

import cyclepacket.course.CourseDoubt;
import cyclepacket.finding.Finding;
import cyclepacket.plan.Anchor;
import java.util.List;

/** A row hangs on an anchor that has no date. */
final class AnchorUndatedRule extends Rule {
    AnchorUndatedRule() {
        super("ANCHOR-UNDATED", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<CourseDoubt> doubts = plan.doubts(CourseDoubt.Kind.ANCHOR_UNDATED);
        boolean startIsUndated = doubts.stream().anyMatch(doubt -> isAnchor(doubt, Anchor.S1));
        return doubts.stream()
                // Without S1 the latest trigger has no date either; one finding says it.
                .filter(doubt -> !startIsUndated || !isAnchor(doubt, Anchor.T))
                .map(doubt -> finding(plan, doubt))
                .toList();
    }

    private static boolean isAnchor(CourseDoubt doubt, Anchor anchor) {
        return doubt.subject().equals(anchor.code());
    }

    /** The retrieval is known only late in a course; what hangs on it waits for the next issue. */
    private Finding finding(ComputedPlan plan, CourseDoubt doubt) {
        if (isAnchor(doubt, Anchor.R)) {
            return warn(
                    plan.inPlan("/anchors/R"),
                    "the retrieval has no date, so the rows that hang on it are not in this packet",
                    "write R when it is known");
        }
        return stop(
                plan.placeOf(doubt),
                doubt.subject() + " has no date, and a row of the protocol hangs on it",
                "write " + doubt.subject() + " under anchors, for example " + doubt.subject() + ": 2027-03-05");
    }
}

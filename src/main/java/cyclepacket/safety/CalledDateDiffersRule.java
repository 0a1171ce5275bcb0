package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** What was told to the patient and what the plan says must be the same day. The trigger has a rule of its own. */
final class CalledDateDiffersRule extends Rule {
    CalledDateDiffersRule() {
        super("CALLED-DATE-DIFFERS", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        plan.plan().anchors().forEach((anchor, planned) -> {
            int line = plan.course().anchors().lastCall(anchor);
            if (line >= 0 && !anchor.equals(Anchor.T)) {
                Plan.Moment told = plan.plan().called().get(line).at();
                if (differs(planned, told)) {
                    found.add(stop(
                            plan.inPlan("/called/" + line + "/at"),
                            anchor + " was called for " + words(told) + " and is planned for " + words(planned),
                            "mend anchors, or call again, have it read back and write that call"));
                }
            }
        });
        return found;
    }

    private static boolean differs(Plan.Moment planned, Plan.Moment told) {
        boolean bothHaveHours = planned.time().isPresent() && told.time().isPresent();
        return !planned.date().equals(told.date())
                || (bothHaveHours && !planned.time().equals(told.time()));
    }

    private static String words(Plan.Moment moment) {
        return Phrases.day(moment.date())
                + moment.time().map(time -> ", " + time).orElse("");
    }
}

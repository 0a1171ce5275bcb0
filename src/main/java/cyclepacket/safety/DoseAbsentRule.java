package cyclepacket.safety;

import cyclepacket.course.CourseDoubt;
import cyclepacket.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/** A day of a row that no dose line covers. */
final class DoseAbsentRule extends Rule {
    DoseAbsentRule() {
        super("DOSE-ABSENT", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<CourseDoubt> doubts = plan.doubts(CourseDoubt.Kind.DOSE_ABSENT);
        List<Finding> found = new ArrayList<>();
        for (String medicine : plan.files().medicines().keySet()) {
            List<CourseDoubt> own = doubts.stream()
                    .filter(doubt -> doubt.subject().startsWith(medicine + " on "))
                    .toList();
            if (!own.isEmpty()) {
                found.add(stop(
                        plan.inPlan("/doses/" + medicine),
                        "no dose line covers " + own.get(0).subject() + more(own.size() - 1),
                        "write the ordered dose from the first day of the row on"));
            }
        }
        return found;
    }

    private static String more(int others) {
        return others == 0 ? "" : " and " + Phrases.count(others, "more day");
    }
}

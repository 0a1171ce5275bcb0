package cyclepacket.safety;

import cyclepacket.course.DatedDose;
import cyclepacket.finding.Finding;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A dose line that starts after the last dose of its medicine: an order that no injection follows. */
final class DoseLineUnusedRule extends Rule {
    DoseLineUnusedRule() {
        super("DOSE-LINE-UNUSED", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (DatedLine line : DatedLine.all(plan)) {
            plan.course().dosesOf(line.medicine()).stream()
                    .map(DatedDose::date)
                    .max(LocalDate::compareTo)
                    .filter(last -> line.from().isAfter(last))
                    .ifPresent(last -> found.add(warn(
                            line.place(plan),
                            "this line starts on " + Phrases.day(line.from()) + ", after the last dose of "
                                    + line.medicine() + " on " + Phrases.day(last),
                            "check month and year, or take the line out")));
        }
        return found;
    }
}

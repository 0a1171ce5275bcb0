package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A dose line that starts before the protocol gives the medicine at all. */
final class DoseLineBeforeRowRule extends Rule {
    DoseLineBeforeRowRule() {
        super("DOSE-LINE-BEFORE-ROW", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (DatedLine line : DatedLine.all(plan)) {
            firstDay(plan, line.medicine())
                    .filter(first -> line.from().isBefore(first))
                    .ifPresent(first -> found.add(stop(
                            line.place(plan),
                            "this line starts on " + Phrases.day(line.from()) + ", before " + line.medicine()
                                    + " starts on " + Phrases.day(first),
                            "write the day the dose really starts; if the start was moved, move this line too")));
        }
        return found;
    }

    private static Optional<LocalDate> firstDay(ComputedPlan plan, String medicine) {
        return plan.protocol().rows().stream()
                .filter(row -> row.medicine().equals(medicine))
                .flatMap(row -> plan.course().anchors().date(row.firstDay()).stream())
                .min(LocalDate::compareTo);
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Two dose lines of one medicine that start on one date: nobody can tell which one holds. */
final class DoseLinesSameDateRule extends Rule {
    DoseLinesSameDateRule() {
        super("DOSE-LINES-SAME-DATE", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        Set<String> seen = new HashSet<>();
        return DatedLine.all(plan).stream()
                .filter(line -> !seen.add(line.medicine() + " " + line.from()))
                .map(line -> stop(
                        line.place(plan),
                        "two dose lines of " + line.medicine() + " start on " + Phrases.day(line.from()),
                        "take out the line that does not hold, after reading the order"))
                .toList();
    }
}

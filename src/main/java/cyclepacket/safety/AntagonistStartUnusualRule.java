package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.DayMark;
import cyclepacket.plan.Protocol;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** An antagonist with a fixed start on another day than the fifth or sixth of stimulation (day 5 in the trial of PMC8091520; day 6 from memory). */
final class AntagonistStartUnusualRule extends Rule {
    private static final Set<String> ANTAGONISTS = Set.of("ganirelix", "cetrorelix");

    AntagonistStartUnusualRule() {
        super("ANTAGONIST-START-UNUSUAL", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (int index = 0; index < plan.protocol().rows().size(); index++) {
            Protocol.Row row = plan.protocol().rows().get(index);
            boolean isAntagonist = plan.files()
                    .medicine(row.medicine())
                    .filter(medicine -> ANTAGONISTS.contains(Phrases.plain(medicine.name())))
                    .isPresent();
            if (isAntagonist
                    && row.firstDay() instanceof DayMark.FromAnchor mark
                    && mark.from().equals(Anchor.S1)
                    && (mark.daysAfter() < 4 || mark.daysAfter() > 5)) {
                found.add(warn(
                        plan.inProtocol("/rows/" + index),
                        row.medicine() + " starts on " + mark + "; a fixed start is usually on S5 or S6",
                        "ask the prescriber whether this day is meant"));
            }
        }
        return found;
    }
}

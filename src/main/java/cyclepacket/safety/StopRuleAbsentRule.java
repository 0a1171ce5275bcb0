package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.Protocol;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Luteal support must not end on a silent date: some stop because they bleed, others at the first test (ESHRE 2019, as reported in Front Endocrinol 2020;11:500: at least until the pregnancy test). */
final class StopRuleAbsentRule extends Rule {
    private static final Set<Anchor> LUTEAL = Set.of(Anchor.R, new Anchor("P"));

    StopRuleAbsentRule() {
        super("STOP-RULE-ABSENT", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (int index = 0; index < plan.protocol().rows().size(); index++) {
            Protocol.Row row = plan.protocol().rows().get(index);
            boolean isLuteal = row.firstDay().anchor().filter(LUTEAL::contains).isPresent()
                    && !row.firstDay().equals(row.lastDay());
            if (isLuteal && row.pattern().stopRule().isEmpty()) {
                found.add(warn(
                        plan.inProtocol("/rows/" + index),
                        row.medicine() + " ends on " + row.lastDay() + ", and nothing tells the patient when to stop",
                        "write stop-rule, for example: Go on until we tell you to stop, also if you bleed."));
            }
        }
        return found;
    }
}

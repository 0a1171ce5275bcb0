package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.DayMark;
import cyclepacket.plan.Protocol;
import java.util.ArrayList;
import java.util.List;

/** Luteal support that starts outside the evening of retrieval to three days after it (ESHRE 2019, as reported in Front Endocrinol 2020;11:500, table 3). */
final class LutealStartUnusualRule extends Rule {
    private static final int LATEST_START = 3;

    LutealStartUnusualRule() {
        super("LUTEAL-START-UNUSUAL", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (int index = 0; index < plan.protocol().rows().size(); index++) {
            Protocol.Row row = plan.protocol().rows().get(index);
            if (row.firstDay() instanceof DayMark.FromAnchor mark
                    && mark.from().equals(Anchor.R)
                    && row.pattern().stopRule().isPresent()
                    && (mark.daysAfter() < 0 || mark.daysAfter() > LATEST_START)) {
                found.add(warn(
                        plan.inProtocol("/rows/" + index),
                        row.medicine() + " starts on " + mark + "; luteal support usually starts from R to R+"
                                + LATEST_START,
                        "ask the prescriber whether this day is meant"));
            }
        }
        return found;
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Protocol.StimulationDays;
import java.util.List;
import java.util.Map;

/** Odds for a length that the protocol does not have: they would count for nothing. */
final class SupplyOddsOutsideRule extends Rule {
    SupplyOddsOutsideRule() {
        super("SUPPLY-ODDS-OUTSIDE", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        String protocol = plan.protocol().id();
        StimulationDays days = plan.protocol().stimulationDays();
        return plan.clinic().supplies().lengthOdds().getOrDefault(protocol, Map.of()).entrySet().stream()
                .filter(odds -> odds.getValue() > 0)
                .map(Map.Entry::getKey)
                .filter(length -> length < days.least() || length > days.most())
                .map(length -> warn(
                        plan.inClinic("/supplies/length-odds/" + protocol + "/" + length),
                        "these are odds of " + length + " evenings, and " + protocol + " has " + days.least() + " to "
                                + days.most(),
                        "take the line out, or mend stimulation-days"))
                .toList();
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.supply.SupplyLine;
import java.util.List;

/** What is at home will not surely last; overfill never counts. */
final class SupplyShortRule extends Rule {
    SupplyShortRule() {
        super("SUPPLY-SHORT", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        return plan.supply().lines().stream()
                .filter(SupplyLine::isShort)
                .map(line -> finding(plan, line))
                .toList();
    }

    private Finding finding(ComputedPlan plan, SupplyLine line) {
        String until = line.covered()
                .surelyUntil()
                .map(day -> "lasts for sure until " + Phrases.day(day) + "; ")
                .orElse("does not last for the first dose; ");
        String text = line.medicine().id() + " " + until
                + Phrases.day(line.covered().firstShort().orElseThrow()) + " may be short, by "
                + line.covered().shortAtMost() + " at most in the whole course";
        String mend = line.lastOrder()
                .filter(last -> !SupplyOrderTooLateRule.isTooLate(plan, line))
                .map(last -> "order by " + Phrases.at(last) + ", the last hour that is surely in time")
                .orElse("no parcel surely comes in time; call the pharmacy and the prescriber today");
        return warn(plan.inPlan("/on-hand/" + line.medicine().id()), text, mend);
    }
}

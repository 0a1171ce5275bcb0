package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Revision;
import java.util.ArrayList;
import java.util.List;

/** A change of this issue that was told and not read back may have been heard wrong. */
final class RevisedNotReadBackRule extends Rule {
    RevisedNotReadBackRule() {
        super("REVISED-NOT-READ-BACK", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Revision> revised = plan.plan().revised();
        List<Finding> found = new ArrayList<>();
        for (int line = 0; line < revised.size(); line++) {
            Revision own = revised.get(line);
            if (own.issue() == plan.plan().issue() && !own.readBack()) {
                found.add(warn(
                        plan.inPlan("/revised/" + line + "/read-back"),
                        "a change of this issue was told on " + Phrases.day(own.on()) + " and not read back",
                        "call again, have it read back and write that call"));
            }
        }
        return found;
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.HouseRules;
import java.util.ArrayList;
import java.util.List;

/** The patient avoids alcohol, and the clinic cleans the skin with it. */
final class AvoidSwabRule extends Rule {
    private static final String ALCOHOL = "alcohol";

    AvoidSwabRule() {
        super("AVOID-SWAB", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        boolean usesAlcohol = plan.clinic().rules().swabSkin() == HouseRules.SwabSkin.ALCOHOL;
        List<String> avoid = plan.plan().avoid();
        List<Finding> found = new ArrayList<>();
        for (int index = 0; usesAlcohol && index < avoid.size(); index++) {
            if (Phrases.plain(avoid.get(index)).equals(ALCOHOL)) {
                found.add(warn(
                        plan.inPlan("/avoid/" + index),
                        "the patient avoids alcohol, and the clinic cleans the skin with it",
                        "use soap and water: swab-skin: soap-and-water in the clinic file"));
            }
        }
        return found;
    }
}

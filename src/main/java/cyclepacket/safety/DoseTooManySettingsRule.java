package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Dial;
import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.List;

/**
 * A dose in more injections of one pen than anybody should give in an evening: it points to another pen, or to a slip in
 * the amount or the dial. The limit of four is common practice, no published source.
 */
final class DoseTooManySettingsRule extends Rule {
    private static final int MOST_SETTINGS = 4;

    DoseTooManySettingsRule() {
        super("DOSE-TOO-MANY-SETTINGS", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (OrderedAmount ordered : OrderedAmount.all(plan)) {
            ordered.dial()
                    .filter(dial -> needsTooMany(ordered.amount(), dial))
                    .ifPresent(dial -> found.add(stop(
                            ordered.place(),
                            ordered.amount() + " takes more than " + MOST_SETTINGS
                                    + " injections of a pen that gives at most " + dial.most(),
                            "read the order and the dial in the medicine file again, and ask the prescriber")));
        }
        return found;
    }

    static boolean needsTooMany(Dose amount, Dial dial) {
        return amount.isMoreThan(dial.most().times(MOST_SETTINGS));
    }
}

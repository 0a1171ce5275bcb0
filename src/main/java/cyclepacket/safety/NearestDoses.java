package cyclepacket.safety;

import cyclepacket.ledger.DoseSplit;
import cyclepacket.plan.Dial;
import cyclepacket.plan.HouseRules;
import cyclepacket.quantity.Dose;
import java.util.Optional;

/**
 * The doses next to one that a pen cannot give: proposed to the prescriber, never chosen. Both are there for every amount
 * above the dial's least.
 */
record NearestDoses(Optional<Dose> below, Optional<Dose> above, Dial dial) {

    static NearestDoses of(Dose amount, Dial dial, HouseRules.SplitDose rule) {
        Optional<Dose> below = Optional.empty();
        Dose mark = dial.markAtOrBelow(amount);
        while (below.isEmpty() && !mark.isLessThan(dial.least())) {
            below = given(mark, amount, dial, rule);
            mark = mark.minus(dial.step());
        }
        Optional<Dose> above = Optional.empty();
        mark = dial.markAtOrAbove(amount).max(dial.least());
        while (above.isEmpty()) {
            above = given(mark, amount, dial, rule);
            mark = mark.plus(dial.step());
        }
        return new NearestDoses(below, above, dial);
    }

    private static Optional<Dose> given(Dose mark, Dose amount, Dial dial, HouseRules.SplitDose rule) {
        boolean isGiven =
                !mark.equals(amount) && !DoseSplit.settings(mark, dial, rule).isEmpty();
        return isGiven ? Optional.of(mark) : Optional.empty();
    }

    /** The choice to put to the prescriber. */
    String question() {
        boolean oneSetting = !above.orElse(dial.most()).isMoreThan(dial.most());
        String has = oneSetting ? "the dial has " : "the nearest doses of this pen are ";
        return has + below.orElseThrow().number().toPlainString() + " and "
                + above.orElseThrow().number().toPlainString() + "; ask the prescriber which one";
    }
}

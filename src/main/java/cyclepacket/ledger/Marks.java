package cyclepacket.ledger;

import cyclepacket.plan.Dial;
import cyclepacket.plan.HouseRules;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseRange;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which numbers a person can read and dial. Content is continuous, a dial is not; the clinic's house rule says what a
 * number between two marks counts as.
 */
public final class Marks {
    private final Dial dial;
    private final HouseRules rules;

    public Marks(Dial dial, HouseRules rules) {
        this.dial = dial;
        this.rules = rules;
    }

    /** The smallest number that is printed as one to dial; anything below is for the clinic's small-remainder rule. */
    public Dose smallest() {
        Dose least = dial.least();
        BigDecimal below = rules.smallRemainder().belowIn(least.unit()).orElse(BigDecimal.ZERO);
        if (rules.smallRemainder().rule() == HouseRules.SmallRemainder.Do.GIVE) {
            return least;
        }
        // A threshold finer than a thousandth cannot be met by any amount, so cutting it there changes nothing.
        Dose limit = Dose.of(below.setScale(3, RoundingMode.CEILING), least.unit());
        return least.max(dial.markAtOrAbove(limit));
    }

    /** The marks from the smallest to the largest number that may be printed for this range. */
    public Optional<DoseRange> printed(Owed owed) {
        // The smallest mark is above zero, so a range that starts at zero and one just above it print the same.
        Dose low = low(owed).max(smallest());
        Dose high = high(owed).min(dial.most());
        return low.isMoreThan(high) ? Optional.empty() : Optional.of(new DoseRange(low, high));
    }

    /** Every mark that may be printed for this range, rising. */
    public List<Dose> each(Owed owed) {
        List<Dose> marks = new ArrayList<>();
        printed(owed).ifPresent(range -> {
            for (Dose mark = range.least(); !mark.isMoreThan(range.most()); mark = mark.plus(dial.step())) {
                marks.add(mark);
            }
        });
        return marks;
    }

    /** Whether this range also holds a remainder too small to be printed as a number. */
    public boolean hasSmall(Owed owed) {
        return owed.least().isLessThan(smallest());
    }

    private Dose low(Owed owed) {
        return switch (rules.betweenMarks()) {
            case UP, CALL -> dial.markAtOrAbove(owed.least());
            case NEAREST -> owed.least().toMultipleOf(dial.step(), RoundingMode.HALF_UP);
        };
    }

    private Dose high(Owed owed) {
        return switch (rules.betweenMarks()) {
            case UP -> dial.markAtOrAbove(owed.most());
            case CALL -> dial.markAtOrBelow(owed.most());
            case NEAREST -> owed.most().toMultipleOf(dial.step(), RoundingMode.HALF_UP);
        };
    }
}

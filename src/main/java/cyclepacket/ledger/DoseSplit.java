package cyclepacket.ledger;

import cyclepacket.plan.Dial;
import cyclepacket.plan.HouseRules.SplitDose;
import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.List;

/** Divides a dose above the dial's most into the fewest settings, by the clinic's house rule. */
public final class DoseSplit {
    /** As many lines as the record can hold for one evening; a rule refuses such a dose long before. A technical limit. */
    private static final int MOST_SETTINGS = 20;

    private DoseSplit() {}

    /**
     * The settings of one dose, in the order they are given; their sum is the dose.
     *
     * @return empty when the dose is zero, is no multiple of the step, needs more than 20 settings, or when a setting would be
     *     below the dial's least: nothing is ever rounded to make it fit
     */
    public static List<Dose> settings(Dose dose, Dial dial, SplitDose rule) {
        boolean isTooMuch = dose.isMoreThan(dial.most().times(MOST_SETTINGS));
        if (dose.isZero() || isTooMuch || !dose.isMultipleOf(dial.step())) {
            return List.of();
        }
        List<Dose> settings = switch (rule) {
            case EQUAL -> equal(dose, dial);
            case FULL_DIAL_FIRST -> fullDialFirst(dose, dial);
        };
        return settings.stream().allMatch(dial::has) ? settings : List.of();
    }

    private static List<Dose> equal(Dose dose, Dial dial) {
        long steps = dose.milliUnits() / dial.step().milliUnits();
        long mostSteps = dial.most().milliUnits() / dial.step().milliUnits();
        long parts = (steps + mostSteps - 1) / mostSteps;
        List<Dose> settings = new ArrayList<>();
        for (long part = 0; part < parts; part++) {
            long own = steps / parts + (part < steps % parts ? 1 : 0);
            settings.add(dial.step().times(Math.toIntExact(own)));
        }
        return settings;
    }

    private static List<Dose> fullDialFirst(Dose dose, Dial dial) {
        List<Dose> settings = new ArrayList<>();
        Dose rest = dose;
        while (rest.isMoreThan(dial.most())) {
            settings.add(dial.most());
            rest = rest.minus(dial.most());
        }
        settings.add(rest);
        return settings;
    }
}

package cyclepacket.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.plan.Dial;
import cyclepacket.plan.HouseRules.SplitDose;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Dials with steps from 0.5 to 75 and doses up to 10,000, split in plain decimals a second time. */
class DoseSplitLaws {
    private static final long SEED = Long.getLong("cyclepacket.seed", 20_270_315);
    private static final int ROUNDS = 20_000;
    private static final List<String> STEPS =
            List.of("0.5", "1", "2.5", "5", "6.25", "8.333", "12.5", "25", "37.5", "50", "75");

    private final SplittableRandom random = new SplittableRandom(SEED);

    private BigDecimal step;
    private BigDecimal least;
    private BigDecimal most;
    private BigDecimal dose;

    private void draw() {
        step = new BigDecimal(STEPS.get(random.nextInt(STEPS.size())));
        int leastSteps = 1 + random.nextInt(4);
        least = step.multiply(BigDecimal.valueOf(leastSteps));
        most = step.multiply(BigDecimal.valueOf(leastSteps + random.nextInt(40)));
        BigDecimal wanted = BigDecimal.valueOf(random.nextLong(10_000_001), 3);
        dose = random.nextInt(10) == 0
                ? wanted
                : wanted.divide(step, 0, RoundingMode.DOWN).multiply(step);
    }

    private static Dose units(BigDecimal number) {
        return Dose.of(number, DoseUnit.UNITS);
    }

    /** The settings worked out in decimals, largest first; nothing where the dose cannot be dialled whole. */
    private List<BigDecimal> expected(SplitDose rule) {
        int parts = dose.divide(most, 0, RoundingMode.CEILING).intValueExact();
        if (dose.signum() == 0 || dose.remainder(step).signum() != 0 || parts > 20) {
            return List.of();
        }
        List<BigDecimal> settings = new ArrayList<>();
        BigDecimal rest = dose;
        for (int left = parts; left > 0; left--) {
            BigDecimal own = rule == SplitDose.FULL_DIAL_FIRST
                    ? rest.min(most)
                    : rest.divide(step.multiply(BigDecimal.valueOf(left)), 0, RoundingMode.CEILING)
                            .multiply(step);
            settings.add(own);
            rest = rest.subtract(own);
        }
        assertEquals(0, rest.signum());
        return Collections.min(settings).compareTo(least) < 0 ? List.of() : settings;
    }

    @Test
    void giveTheWholeDoseInTheFewestSettingsOrNothing() {
        int whole = 0;
        for (int round = 0; round < ROUNDS; round++) {
            draw();
            Dial dial = new Dial(units(least), units(step), units(most));
            for (SplitDose rule : SplitDose.values()) {
                List<Dose> settings = DoseSplit.settings(units(dose), dial, rule);
                assertEquals(
                        expected(rule).stream().map(DoseSplitLaws::units).toList(),
                        settings,
                        () -> dose + " by " + step + " up to " + most + ", " + rule + ", seed " + SEED);
                whole += settings.isEmpty() ? 0 : 1;
            }
        }
        assertTrue(whole > ROUNDS / 2 && whole < 2 * ROUNDS, "both kinds occur: " + whole);
    }
}

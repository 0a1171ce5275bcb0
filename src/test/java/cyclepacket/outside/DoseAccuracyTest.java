package cyclepacket.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.ledger.DoseSplit;
import cyclepacket.plan.Dial;
import cyclepacket.plan.HouseRules;
import cyclepacket.quantity.Dose;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The dose-accuracy limits of needle-based injection systems as a property of the dial. Nothing of it is ever printed:
 * accuracy is a matter of the device.
 *
 * <p>Source: ISO 11608-1, limit of one step while the dose is 20 steps or less, else 5 % of the dose. The formula is
 * from memory; it is confirmed by published limits: 1 to 80 units by steps of 1 in Curr Med Res Opin 2010;26:901, and
 * "1 unit below 20 units, 5 % at or above 20" in Diabetes Technol Ther 2001;3:623. The values for other steps are
 * computed.
 */
class DoseAccuracyTest {
    private static final int STEPS_WITH_FIXED_LIMIT = 20;

    @ParameterizedTest
    @CsvSource({
        // Published.
        "1, 1, 1",
        "1, 10, 1",
        "1, 30, 1.5",
        "1, 40, 2",
        "1, 60, 3",
        "1, 80, 4",
        // Computed, on both sides of 20 steps.
        "1, 19, 1",
        "1, 20, 1",
        "1, 21, 1.05",
        "5, 75, 5",
        "5, 100, 5",
        "5, 150, 7.5",
        "12.5, 12.5, 12.5",
        "12.5, 150, 12.5",
        "12.5, 250, 12.5",
        "12.5, 300, 15",
        "12.5, 450, 22.5",
        "25, 75, 25",
        "25, 500, 25",
        "25, 600, 30"
    })
    void limitsADoseByItsStep(String step, String dose, String limit) {
        assertEquals(Dose.ofUnits(limit), limit(Dose.ofUnits(dose), Dose.ofUnits(step)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "5", "12.5", "25"})
    void neverLimitsALargerDoseMoreNarrowly(String step) {
        Dose by = Dose.ofUnits(step);
        Dose before = limit(by, by);
        for (int count = 2; count <= 60; count++) {
            Dose now = limit(by.times(count), by);
            assertFalse(now.isLessThan(before), now + " after " + before);
            assertFalse(now.minus(before).isMoreThan(by), "a jump at " + count + " steps");
            before = now;
        }
        Dose threshold = by.times(STEPS_WITH_FIXED_LIMIT);
        assertEquals(by, limit(threshold, by), "both formulas meet at 20 steps");
        assertTrue(limit(threshold.plus(by), by).isMoreThan(by));
    }

    /** Each setting has its own error, so a dose that fits in one is never split, and none is split further than needed. */
    @ParameterizedTest
    @ValueSource(strings = {"1", "5", "12.5", "25"})
    void splitsNoDoseFurtherThanTheDialAsks(String step) {
        Dose by = Dose.ofUnits(step);
        Dial dial = new Dial(by, by, by.times(18));
        for (int count = 1; count <= 54; count++) {
            Dose dose = by.times(count);
            List<Dose> settings = DoseSplit.settings(dose, dial, HouseRules.SplitDose.EQUAL);
            assertEquals((count + 17) / 18, settings.size(), dose.toString());
            assertFalse(sum(settings, by).isMoreThan(sum(splitOnceMore(settings, by), by)));
        }
    }

    private static List<Dose> splitOnceMore(List<Dose> settings, Dose step) {
        List<Dose> more = new ArrayList<>(settings);
        Dose first = more.remove(0);
        more.add(step.min(first));
        more.add(first.minus(step.min(first)));
        more.removeIf(Dose::isZero);
        return more;
    }

    private static Dose sum(List<Dose> settings, Dose step) {
        return settings.stream()
                .map(setting -> limit(setting, step))
                .reduce(Dose::plus)
                .orElseThrow();
    }

    private static Dose limit(Dose dose, Dose step) {
        Dose fivePercent = Dose.of(dose.number().multiply(new BigDecimal("0.05")), dose.unit());
        return dose.isMoreThan(step.times(STEPS_WITH_FIXED_LIMIT)) ? fivePercent : step;
    }
}

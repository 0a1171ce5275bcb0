package cyclepacket.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Amounts up to 10,000, volumes and prices against the same sums in plain decimals, for seeded values. */
class QuantityLaws {
    private static final long SEED = Long.getLong("cyclepacket.seed", 20_270_316);
    private static final int ROUNDS = 20_000;

    private final SplittableRandom random = new SplittableRandom(SEED);

    private BigDecimal upTo(long most, int decimals) {
        return BigDecimal.valueOf(random.nextLong(most + 1), decimals);
    }

    private static Dose dose(BigDecimal number) {
        return Dose.of(number, DoseUnit.UNITS);
    }

    private static void same(BigDecimal expected, BigDecimal actual) {
        assertEquals(0, expected.compareTo(actual), () -> expected + " is not " + actual + ", seed " + SEED);
    }

    @Test
    void addTakeAndMultiplyDosesAsDecimalsDo() {
        for (int round = 0; round < ROUNDS; round++) {
            BigDecimal a = upTo(10_000_000, 3);
            BigDecimal b = upTo(10_000_000, 3);
            int count = random.nextInt(400);
            same(a.add(b), dose(a).plus(dose(b)).number());
            same(
                    a.max(b).subtract(a.min(b)),
                    dose(a).max(dose(b)).minus(dose(a).min(dose(b))).number());
            same(a.multiply(BigDecimal.valueOf(count)), dose(a).times(count).number());
            assertEquals(a.compareTo(b) < 0, dose(a).isLessThan(dose(b)));
            assertEquals(a.compareTo(b) > 0, dose(a).isMoreThan(dose(b)));
            if (a.compareTo(b) != 0) {
                assertThrows(Refusal.class, () -> dose(a.min(b)).minus(dose(a.max(b))));
            }
        }
    }

    @Test
    void findTheMarksBelowAndAboveForEveryStep() {
        for (int round = 0; round < ROUNDS; round++) {
            BigDecimal step = BigDecimal.valueOf(random.nextLong(1, 151), 0).divide(BigDecimal.valueOf(2));
            BigDecimal a = upTo(10_000_000, 3);
            for (RoundingMode mode :
                    new RoundingMode[] {RoundingMode.FLOOR, RoundingMode.CEILING, RoundingMode.HALF_UP}) {
                same(
                        a.divide(step, 0, mode).multiply(step),
                        dose(a).toMultipleOf(dose(step), mode).number());
            }
            assertEquals(a.remainder(step).signum() == 0, dose(a).isMultipleOf(dose(step)));
        }
    }

    @Test
    void turnMilligramsAndMicrogramsIntoEachOtherWithoutLoss() {
        for (int round = 0; round < ROUNDS; round++) {
            BigDecimal milligrams = upTo(10_000_000, 3);
            Dose dose = Dose.of(milligrams, DoseUnit.MG);
            same(milligrams.movePointRight(3), dose.in(DoseUnit.MCG).number());
            assertEquals(dose, dose.in(DoseUnit.MCG).in(DoseUnit.MG));
        }
    }

    @Test
    void drawTheVolumeThatHoldsADoseExactlyOrNone() {
        for (int round = 0; round < ROUNDS; round++) {
            Dose in = dose(upTo(10_000_000, 3).max(BigDecimal.ONE));
            Volume whole = Volume.ofMicrolitres(random.nextLong(1, Volume.MOST_MICROLITRES + 1));
            Concentration strength = new Concentration(in, whole);
            Dose dose = dose(upTo(10_000_000, 3));
            BigDecimal[] exact = dose.number()
                    .multiply(BigDecimal.valueOf(1_000))
                    .multiply(whole.millilitres())
                    .divideAndRemainder(in.number());
            boolean isWhole = exact[1].signum() == 0 && exact[0].longValueExact() <= Volume.MOST_MICROLITRES;
            if (exact[0].compareTo(BigDecimal.valueOf(Volume.MOST_MICROLITRES)) < 0) {
                assertEquals(isWhole, strength.volumeOf(dose).isPresent(), () -> dose + " of " + strength);
                strength.volumeOf(dose)
                        .ifPresent(volume ->
                                assertEquals(dose, strength.doseIn(volume).orElseThrow()));
            }
        }
    }

    @Test
    void addPricesAndReadThemBack() {
        for (int round = 0; round < ROUNDS; round++) {
            BigDecimal a = upTo(99_999_999_999L, 2);
            BigDecimal b = upTo(99_999_999_999L, 2);
            same(a.add(b), Money.of(a).plus(Money.of(b)).number());
            assertEquals(Money.of(a), Money.of(new BigDecimal(Money.of(a).toString())));
            assertEquals(a.compareTo(b), Money.of(a).compareTo(Money.of(b)));
            BigDecimal finer = a.add(BigDecimal.valueOf(random.nextLong(1, 10), 3));
            assertThrows(Refusal.class, () -> Money.of(finer));
            assertThrows(Refusal.class, () -> Money.of(a.add(BigDecimal.ONE).negate()));
        }
    }
}

package cyclepacket;

import cyclepacket.ledger.Draw;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseUnit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Settings of a dial that nobody wrote down yet, for tests of sums. */
public final class DrawSketch {
    public static final LocalDate FIRST = LocalDate.of(2027, 3, 5);

    private DrawSketch() {}

    /**
     * One setting.
     *
     * @param night the evening, 1 for {@link #FIRST}
     * @param before units drawn before it, and {@code after} it
     */
    public static Draw draw(int night, int number, int before, int after) {
        return new Draw(
                FIRST.plusDays(night - 1L),
                number,
                units(after - before),
                units(before),
                units(after),
                Optional.empty(),
                Optional.empty(),
                false,
                List.of(),
                units(0));
    }

    public static Dose units(int amount) {
        return new Dose(amount * 1000L, DoseUnit.UNITS);
    }
}

package cyclepacket.plan;

import cyclepacket.quantity.Length;
import cyclepacket.quantity.Mark;
import cyclepacket.quantity.Refusal;
import cyclepacket.quantity.Volume;
import java.math.BigDecimal;
import java.util.Objects;

/**
 * One kind of empty syringe: what its lines mean, and the sizes that a drawing of it needs.
 *
 * @param capacity the volume at its last line
 * @param graduation the volume between two lines; the capacity is a whole number of them
 * @param numbers what the numbers beside the lines count
 * @param numberedEvery how many lines there are from one number to the next, 1 to 100
 * @param scale the length from the zero line to the last line
 * @param barrel the outside width of its barrel
 * @param loses what stays behind in hub and needle each time it is filled
 * @param source where its sizes come from
 */
public record Syringe(
        String id,
        String name,
        Volume capacity,
        Volume graduation,
        Numbers numbers,
        int numberedEvery,
        Length scale,
        Length barrel,
        Volume loses,
        String source) {
    /** By definition of a syringe whose hundred marks are one millilitre. */
    private static final int MICROLITRES_A_MARK = 10;

    /** A technical limit of what can be drawn. */
    private static final int MOST_LINES = 200;

    public Syringe {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(capacity, "capacity");
        Objects.requireNonNull(graduation, "graduation");
        Objects.requireNonNull(numbers, "numbers");
        Objects.requireNonNull(scale, "scale");
        Objects.requireNonNull(barrel, "barrel");
        Objects.requireNonNull(loses, "loses");
        Objects.requireNonNull(source, "source");
        if (graduation.isZero() || capacity.isZero() || !capacity.isMultipleOf(graduation)) {
            throw new Refusal(
                    "capacity is a whole number of graduations",
                    "count the lines of the syringe: graduation is the volume from one to the next");
        }
        if (capacity.wholeTimes(graduation) > MOST_LINES) {
            throw new Refusal("a syringe has at most 200 lines", "copy graduation from the syringe's wrapper");
        }
        if (numberedEvery < 1 || numberedEvery > 100) {
            throw new Refusal("numbered-every is from 1 to 100", "count the lines from one number to the next");
        }
    }

    /** What the numbers beside the lines count. */
    public enum Numbers {
        /** A hundred marks to the millilitre, without a unit of volume. */
        MARKS,
        /** Millilitres. */
        ML
    }

    public int lines() {
        return capacity.wholeTimes(graduation);
    }

    /** Whether the volume lies on one of its lines above zero. */
    public boolean hasLineAt(Volume volume) {
        return !volume.isZero() && fits(volume) && volume.isMultipleOf(graduation);
    }

    public boolean fits(Volume volume) {
        return !volume.isMoreThan(capacity);
    }

    /**
     * The number of the line at a volume.
     *
     * @throws Refusal if there is no line at this volume
     */
    public Mark markAt(Volume volume) {
        if (!hasLineAt(volume)) {
            throw new Refusal(volume + " lies on no line of " + id, "use a syringe with finer lines, or a larger one");
        }
        return new Mark(
                switch (numbers) {
                    case MARKS ->
                        BigDecimal.valueOf(volume.microlitres()).divide(BigDecimal.valueOf(MICROLITRES_A_MARK));
                    case ML -> volume.millilitres();
                });
    }
}

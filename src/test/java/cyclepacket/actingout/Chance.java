package cyclepacket.actingout;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/** Seeded choices in whole numbers. */
record Chance(RandomGenerator source) {
    static Chance seeded(long seed) {
        return new Chance(new SplittableRandom(seed));
    }

    boolean in100(int percent) {
        return source.nextInt(100) < percent;
    }

    /** Both ends included. */
    int from(int least, int most) {
        return source.nextInt(least, most + 1);
    }

    /** Both ends included. */
    long from(long least, long most) {
        return source.nextLong(least, most + 1);
    }

    /** A multiple of {@code step} in the range, or the lower multiple when the range holds none. */
    long markFrom(long least, long most, long step) {
        long first = (least + step - 1) / step;
        long last = most / step;
        return (first >= last ? last : from(first, last)) * step;
    }

    int oneOf(int... choices) {
        return choices[source.nextInt(choices.length)];
    }
}

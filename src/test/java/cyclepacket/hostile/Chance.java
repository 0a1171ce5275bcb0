package cyclepacket.hostile;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;

/** Seeded choices; every scrap of text passes through a voice, so that two hands can write the same in other letters. */
final class Chance {
    private final SplittableRandom random;
    private final UnaryOperator<String> voice;

    Chance(long seed, UnaryOperator<String> voice) {
        random = new SplittableRandom(seed);
        this.voice = voice;
    }

    /** One of the scraps, in this hand's letters. */
    String scrap(List<String> scraps) {
        return voice.apply(of(scraps));
    }

    /** From 0 to {@code bound}, exclusive. */
    int below(int bound) {
        return random.nextInt(bound);
    }

    boolean in100(int percent) {
        return random.nextInt(100) < percent;
    }

    <T> T of(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}

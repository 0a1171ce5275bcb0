package cyclepacket.hostile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * One case: a plan of the demo with one of its files bent.
 *
 * @param seed gives the same case again
 * @param kind how it was bent first
 * @param file the file that was bent; the plan or one that it reads
 */
record Bent(long seed, Twist kind, Path plan, Path file, byte[] bytes) {
    static Bent of(Demo demo, long seed, List<Twist> kinds) {
        return of(demo, seed, kinds, text -> text);
    }

    /** @param voice turns each scrap into the letters that are written */
    static Bent of(Demo demo, long seed, List<Twist> kinds, UnaryOperator<String> voice) {
        Chance chance = new Chance(seed, voice);
        Twist kind = chance.of(kinds);
        Path plan = chance.of(demo.plans());
        Path file = chance.in100(55) ? demo.filesOf(plan).get(0) : chance.of(demo.filesOf(plan));
        Node tree = demo.tree(file);
        for (int times = chance.of(List.of(1, 1, 1, 2, 3)); times > 0; times--) {
            kind.bend(tree, chance);
        }
        if (chance.in100(10)) {
            chance.of(kinds).bend(tree, chance);
        }
        String text = YamlOut.write(tree, chance.below(4), chance.in100(50));
        byte[] bytes = kind == Twist.BYTES ? Bytes.damaged(text, chance) : text.getBytes(StandardCharsets.UTF_8);
        return new Bent(seed, kind, plan, file, bytes);
    }

    /** What is done while the bent file lies in its place. */
    @FunctionalInterface
    interface Work {
        void done() throws IOException;
    }

    /** @throws AssertionError with the seed, when the work fails in any way */
    void in(Demo demo, Work work) throws IOException {
        demo.put(file, bytes);
        try {
            work.done();
        } catch (RuntimeException | StackOverflowError | AssertionError fault) {
            throw new AssertionError("seed " + seed + ", " + kind + " of " + file, fault);
        } finally {
            demo.restore(file);
        }
    }
}

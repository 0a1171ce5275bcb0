package cyclepacket.plan;

import cyclepacket.quantity.Refusal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * What a clinic may say about odds of length, boxes as sold, gauze and sharps containers; it may leave out every line.
 *
 * @param lengthOdds by protocol: how often stimulation takes so many evenings, as whole-number weights by days
 * @param boxes how many of an item a box holds as it is sold, 1 to 1,000, by the item's name in the file
 * @param gauzeAnInjection gauze pads for each injection, 0 to 5
 * @param sharps the sharps containers that can be had, smallest first
 */
public record SupplyRules(
        Map<String, Map<Integer, Integer>> lengthOdds,
        Map<String, Integer> boxes,
        int gauzeAnInjection,
        List<SharpsContainer> sharps) {
    /** A clinic that writes nothing about its supplies. */
    public static final SupplyRules NONE = new SupplyRules(Map.of(), Map.of(), 0, List.of());

    /** A technical limit. */
    private static final int MOST_WEIGHT = 1_000_000;

    public SupplyRules {
        Map<String, Map<Integer, Integer>> byDays = new TreeMap<>();
        lengthOdds.forEach((protocol, odds) -> byDays.put(protocol, checked(odds)));
        lengthOdds = InFileOrder.copyOf(byDays);
        boxes = InFileOrder.copyOf(boxes);
        boxes.forEach((item, count) -> requireRange(count, 1, 1_000, "a box holds from 1 to 1,000 of an item"));
        requireRange(gauzeAnInjection, 0, 5, "gauze-an-injection is from 0 to 5");
        sharps = sharps.stream()
                .sorted((one, other) -> Integer.compare(one.holds(), other.holds()))
                .toList();
    }

    private static Map<Integer, Integer> checked(Map<Integer, Integer> odds) {
        odds.values().forEach(weight -> requireRange(weight, 0, MOST_WEIGHT, "odds are whole numbers, 0 or more"));
        if (odds.values().stream().allMatch(weight -> weight == 0)) {
            throw new Refusal("odds that are all zero say nothing", "write how often each length happens");
        }
        return InFileOrder.copyOf(new TreeMap<>(odds));
    }

    private static void requireRange(int value, int least, int most, String text) {
        if (value < least || value > most) {
            throw new Refusal(text, "write a whole number in that range");
        }
    }

    /**
     * A sharps container as it is sold.
     *
     * @param size as written on it, for example {@code 1 quart}
     * @param holds used needles and syringes up to its fill line, 1 to 10,000; the clinic's own figure
     */
    public record SharpsContainer(String size, int holds) {
        public SharpsContainer {
            Objects.requireNonNull(size, "size");
            requireRange(holds, 1, 10_000, "a sharps container holds from 1 to 10,000");
        }
    }
}

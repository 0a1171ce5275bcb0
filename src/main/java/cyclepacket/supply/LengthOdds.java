package cyclepacket.supply;

import cyclepacket.plan.Clinic;
import cyclepacket.plan.Protocol;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * How likely each number of stimulation evenings is.
 *
 * @param weights by number of evenings, those that are still possible; above zero in sum
 * @param isFromClinic false when the clinic gives no odds, or none for what is still possible: then each is as likely
 */
public record LengthOdds(Map<Integer, Integer> weights, boolean isFromClinic) {
    public LengthOdds {
        Objects.requireNonNull(weights, "weights");
        weights = java.util.Collections.unmodifiableMap(new TreeMap<>(weights));
        if (weights.values().stream().allMatch(weight -> weight == 0)) {
            throw new IllegalArgumentException("odds that are all zero say nothing");
        }
    }

    /** @param days the lengths that are still possible, at least one */
    static LengthOdds of(Clinic clinic, Protocol protocol, List<Integer> days) {
        Map<Integer, Integer> written = clinic.supplies().lengthOdds().getOrDefault(protocol.id(), Map.of());
        Map<Integer, Integer> weights = new TreeMap<>();
        days.forEach(length -> weights.put(length, written.getOrDefault(length, 0)));
        boolean says = weights.values().stream().anyMatch(weight -> weight > 0);
        if (!says) {
            days.forEach(length -> weights.put(length, 1));
        }
        return new LengthOdds(weights, says);
    }

    private long sum() {
        return weights.values().stream().mapToLong(Integer::longValue).sum();
    }

    /** The chance of exactly this number of evenings. */
    public Ratio of(int days) {
        return Ratio.of(weights.getOrDefault(days, 0), sum());
    }

    /** The chance of this number of evenings or more. */
    public Ratio atLeast(int days) {
        long enough = weights.entrySet().stream()
                .filter(entry -> entry.getKey() >= days)
                .mapToLong(Map.Entry::getValue)
                .sum();
        return Ratio.of(enough, sum());
    }
}

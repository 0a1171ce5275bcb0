package cyclepacket.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * Copies of maps that keep the order of the file. {@code Map.copyOf} walks its entries in an order that changes from one
 * run of the program to the next, and whatever is printed in that order would change with it.
 */
final class InFileOrder {
    private InFileOrder() {}

    /** An unmodifiable copy without nulls, in the order of {@code map}. */
    static <K, V> Map<K, V> copyOf(Map<K, V> map) {
        Map<K, V> copy = new LinkedHashMap<>(map);
        copy.forEach((key, value) -> {
            Objects.requireNonNull(key, "key");
            Objects.requireNonNull(value, "value");
        });
        return Collections.unmodifiableMap(copy);
    }
}

package cyclepacket.finding;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** A value, or nothing, together with everything that was found on the way to it. */
public record Checked<T>(Optional<T> value, List<Finding> findings) {
    public Checked {
        Objects.requireNonNull(value, "value");
        findings = List.copyOf(findings);
    }

    public static <T> Checked<T> of(T value, List<Finding> findings) {
        return new Checked<>(Optional.of(value), findings);
    }

    public static <T> Checked<T> refused(List<Finding> findings) {
        return new Checked<>(Optional.empty(), findings);
    }

    public boolean hasStop() {
        return findings.stream().anyMatch(Finding::isStop);
    }
}

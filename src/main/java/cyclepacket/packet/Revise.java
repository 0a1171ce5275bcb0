package cyclepacket.packet;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What an issue changes, as it was typed, with the order behind it and the call that told it.
 *
 * @param order the reference of the order
 * @param orderedBy the prescriber; empty when it is the one of the issue before
 * @param orderedOn the day of the order; empty for the day of the call
 * @param by who prepares the issue
 * @param calledBy who called; empty when it is who prepares
 * @param to who took the call
 * @param on the day of the call and of the new issue
 * @param readBack whether everything was read back
 * @param changes each as {@code kind subject=value@day}, see {@link Change}
 */
public record Revise(
        String order,
        Optional<String> orderedBy,
        Optional<LocalDate> orderedOn,
        String by,
        Optional<String> calledBy,
        String to,
        LocalDate on,
        boolean readBack,
        List<Change> changes) {
    public Revise {
        Objects.requireNonNull(order, "order");
        Objects.requireNonNull(orderedBy, "orderedBy");
        Objects.requireNonNull(orderedOn, "orderedOn");
        Objects.requireNonNull(by, "by");
        Objects.requireNonNull(calledBy, "calledBy");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(on, "on");
        changes = List.copyOf(changes);
        if (order.isBlank() || by.isBlank() || to.isBlank()) {
            throw new Unclear("Say --order, --by and --to: an issue without them has no order and no call behind it.");
        }
    }

    String caller() {
        return calledBy.orElse(by);
    }
}

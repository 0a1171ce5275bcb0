package cyclepacket.ledger;

import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One container in the trail of the computation.
 *
 * @param leastTotal the least that all containers up to and with this one give (the trail's A)
 * @param mostTotal the most that all containers up to and with this one give (the trail's B)
 * @param firstOpening the earliest evening it can be opened; empty when it is not needed in the course
 * @param lastOpening the latest evening it can be opened; empty when it may never be
 * @param lastSafeDay the last day of use, counted from the earliest opening; empty without an in-use limit
 * @param firstEnd the first evening it can end, empty when it cannot end in the course
 * @param lastEnd the last evening it can end, empty when it may outlast the course
 * @param read the numbers the record gives for it
 */
public record ContainerLine(
        Container container,
        Dose leastTotal,
        Dose mostTotal,
        Optional<LocalDate> firstOpening,
        Optional<LocalDate> lastOpening,
        Optional<LocalDate> lastSafeDay,
        Optional<LocalDate> firstEnd,
        Optional<LocalDate> lastEnd,
        List<Draw.Stop> read) {
    public ContainerLine {
        Objects.requireNonNull(container, "container");
        Objects.requireNonNull(leastTotal, "leastTotal");
        Objects.requireNonNull(mostTotal, "mostTotal");
        Objects.requireNonNull(firstOpening, "firstOpening");
        Objects.requireNonNull(lastOpening, "lastOpening");
        Objects.requireNonNull(lastSafeDay, "lastSafeDay");
        Objects.requireNonNull(firstEnd, "firstEnd");
        Objects.requireNonNull(lastEnd, "lastEnd");
        read = List.copyOf(read);
    }

    /** Whether it ended already, as the record says. */
    public boolean hasEnded() {
        return !read.isEmpty();
    }
}

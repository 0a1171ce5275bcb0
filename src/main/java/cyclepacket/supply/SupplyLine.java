package cyclepacket.supply;

import cyclepacket.ledger.Covered;
import cyclepacket.plan.Medicine;
import cyclepacket.quantity.Dose;
import java.time.ZonedDateTime;
import java.util.Objects;
import java.util.Optional;

/**
 * How one medicine lasts.
 *
 * @param needed still to be given in the course, counting only labelled or least content against it
 * @param lastOrder the last hour at which an order still comes in time, clinic time; empty when nothing runs short, or
 *     when no order can come in time
 * @param needles pen needles for the rest of the course: one an injection, one for each new cartridge that may be needed,
 *     and the clinic's spares; 0 for medicines without them
 */
public record SupplyLine(
        Medicine medicine, Dose needed, Covered covered, Optional<ZonedDateTime> lastOrder, int needles) {
    public SupplyLine {
        Objects.requireNonNull(medicine, "medicine");
        Objects.requireNonNull(needed, "needed");
        Objects.requireNonNull(covered, "covered");
        Objects.requireNonNull(lastOrder, "lastOrder");
    }

    public boolean isShort() {
        return covered.firstShort().isPresent();
    }
}

package cyclepacket.supply;

import cyclepacket.ledger.Covered;
import cyclepacket.quantity.Dose;
import java.util.Objects;

/**
 * How one medicine lasts if stimulation takes exactly so many evenings.
 *
 * @param needed still to be given
 */
public record LengthCover(int days, Dose needed, Covered covered) {
    public LengthCover {
        Objects.requireNonNull(needed, "needed");
        Objects.requireNonNull(covered, "covered");
    }
}

package cyclepacket.ledger;

import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Mark;
import cyclepacket.quantity.Volume;
import java.util.Objects;

/**
 * How one dose is measured with an empty syringe, exactly.
 *
 * @param vials how many vials are mixed for it; 1 for a vial that holds several doses
 * @param drawn the volume that is drawn and given
 * @param mark the line of the syringe at that volume
 * @param rest what stays in mixed vials and is thrown away; zero for a vial that is kept
 */
public record Measure(Dose dose, int vials, Volume drawn, Mark mark, Dose rest) {
    public Measure {
        Objects.requireNonNull(dose, "dose");
        Objects.requireNonNull(drawn, "drawn");
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(rest, "rest");
    }
}

package cyclepacket.plan;

import cyclepacket.quantity.Concentration;
import cyclepacket.quantity.Refusal;
import cyclepacket.quantity.Volume;
import java.util.Objects;

/**
 * How a stock is made weaker.
 *
 * @param stock the strength on the stock's label
 * @param take the volume of stock, above zero
 * @param with the volume of diluent it is added to, above zero
 * @param madeBy who does it; never worked out by the patient
 */
public record Dilution(Concentration stock, Volume take, Volume with, MadeBy madeBy) {
    public Dilution {
        Objects.requireNonNull(stock, "stock");
        Objects.requireNonNull(take, "take");
        Objects.requireNonNull(with, "with");
        Objects.requireNonNull(madeBy, "madeBy");
        if (take.isZero() || with.isZero()) {
            throw new Refusal("a dilution takes more than zero of both", "copy both volumes from the order");
        }
    }

    /** Who dilutes. */
    public enum MadeBy {
        PHARMACY,
        CLINIC
    }

    /** What stock and diluent are together. */
    public Volume whole() {
        return take.plus(with);
    }
}

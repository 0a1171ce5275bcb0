package cyclepacket.plan;

import cyclepacket.quantity.Concentration;
import cyclepacket.quantity.Volume;
import java.util.Objects;

/**
 * A powder that is mixed once and then kept for several doses.
 *
 * @param diluent the whole volume that the powder is mixed with
 * @param strength what the mixed liquid holds
 * @param openedDays days it may be used once mixed, 1 to 400
 */
public record KeptVial(
        Volume diluent, Concentration strength, Syringe syringe, Needle mixNeedle, Needle giveNeedle, int openedDays)
        implements StockVial {
    public KeptVial {
        Objects.requireNonNull(diluent, "diluent");
        Objects.requireNonNull(strength, "strength");
        Objects.requireNonNull(syringe, "syringe");
        Objects.requireNonNull(mixNeedle, "mixNeedle");
        Objects.requireNonNull(giveNeedle, "giveNeedle");
        OpenedDays.require(openedDays);
    }

    @Override
    public String word() {
        return "kept-vial";
    }
}

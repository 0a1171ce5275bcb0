package cyclepacket.plan;

import cyclepacket.quantity.Concentration;
import java.util.Objects;

/**
 * A vial of ready liquid that holds several doses, drawn with a small syringe.
 *
 * @param strength what the liquid holds
 * @param needle the needle that draws and gives
 * @param openedDays days it may be used once opened, 1 to 400
 */
public record DrawnVial(Concentration strength, Syringe syringe, Needle needle, int openedDays) implements StockVial {
    public DrawnVial {
        Objects.requireNonNull(strength, "strength");
        Objects.requireNonNull(syringe, "syringe");
        Objects.requireNonNull(needle, "needle");
        OpenedDays.require(openedDays);
    }

    @Override
    public String word() {
        return "drawn-vial";
    }
}

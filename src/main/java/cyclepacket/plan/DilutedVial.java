package cyclepacket.plan;

import cyclepacket.quantity.Concentration;
import java.util.Objects;

/**
 * A vial that holds a stock diluted to a weaker, working strength. Whether the dilution gives that strength is checked
 * where doses are known, so that the finding can name them.
 *
 * @param dilution how the stock was diluted
 * @param strength the working strength as the label states it
 * @param openedDays days it may be used once diluted, 1 to 400
 */
public record DilutedVial(Dilution dilution, Concentration strength, Syringe syringe, Needle needle, int openedDays)
        implements StockVial {
    public DilutedVial {
        Objects.requireNonNull(dilution, "dilution");
        Objects.requireNonNull(strength, "strength");
        Objects.requireNonNull(syringe, "syringe");
        Objects.requireNonNull(needle, "needle");
        OpenedDays.require(openedDays);
    }

    @Override
    public String word() {
        return "diluted-vial";
    }
}

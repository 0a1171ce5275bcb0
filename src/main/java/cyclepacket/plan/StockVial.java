package cyclepacket.plan;

import cyclepacket.quantity.Concentration;
import java.util.Optional;

/** A vial that holds several doses at one strength, drawn to a mark of a named syringe. */
public sealed interface StockVial extends Device permits KeptVial, DrawnVial, DilutedVial, OilVial {
    /** What the liquid holds when a dose is drawn. */
    Concentration strength();

    Syringe syringe();

    /** Days it may be used once opened or mixed, 1 to 400. */
    int openedDays();

    @Override
    default Optional<CartridgePen> pen() {
        return Optional.empty();
    }

    @Override
    default Optional<StockVial> stockVial() {
        return Optional.of(this);
    }
}

package cyclepacket.plan;

import cyclepacket.quantity.Concentration;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Volume;
import java.util.Optional;

/** A vial that holds several doses at one strength, drawn to a mark of a named syringe. */
public sealed interface StockVial extends Device permits KeptVial, DrawnVial, DilutedVial, OilVial {
    /** What the liquid holds when a dose is drawn. */
    Concentration strength();

    Syringe syringe();

    /** Days it may be used once opened or mixed, 1 to 400. */
    int openedDays();

    /** The oil it is in, as it is said; empty for what is in water. */
    default Optional<String> oilName() {
        return Optional.empty();
    }

    /** Microlitres in a vial with so much of the medicine; a part that is not whole does not count. */
    default long holds(Dose content) {
        return strength().wholeSteps(content, Volume.ofMicrolitres(1));
    }

    /** Microlitres that one dose takes out, with what the syringe loses; a part that is not whole counts whole, no dose none. */
    default long takes(Dose dose) {
        if (dose.isZero()) {
            return 0;
        }
        boolean isExact = strength().volumeOf(dose).isPresent();
        return holds(dose) + (isExact ? 0 : 1) + syringe().loses().microlitres();
    }

    @Override
    default Optional<CartridgePen> pen() {
        return Optional.empty();
    }

    @Override
    default Optional<StockVial> stockVial() {
        return Optional.of(this);
    }
}

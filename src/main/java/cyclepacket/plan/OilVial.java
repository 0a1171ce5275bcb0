package cyclepacket.plan;

import cyclepacket.quantity.Concentration;
import java.util.Objects;
import java.util.Optional;

/**
 * A vial of medicine in oil for a muscle, drawn with one needle and given with another.
 *
 * @param strength what the oil holds
 * @param openedDays days it may be used once opened, 1 to 400
 * @param oil which oil it is, for people who avoid one
 */
public record OilVial(
        Concentration strength, Syringe syringe, Needle drawNeedle, Needle giveNeedle, int openedDays, String oil)
        implements StockVial {
    public OilVial {
        Objects.requireNonNull(strength, "strength");
        Objects.requireNonNull(syringe, "syringe");
        Objects.requireNonNull(drawNeedle, "drawNeedle");
        Objects.requireNonNull(giveNeedle, "giveNeedle");
        Objects.requireNonNull(oil, "oil");
        OpenedDays.require(openedDays);
    }

    /** The oil as it is said: {@code sesame oil} for {@code sesame-oil}. */
    @Override
    public Optional<String> oilName() {
        return Optional.of(oil.replace('-', ' '));
    }

    @Override
    public String word() {
        return "oil-vial";
    }
}

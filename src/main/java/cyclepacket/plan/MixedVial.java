package cyclepacket.plan;

import cyclepacket.quantity.Refusal;
import cyclepacket.quantity.Volume;
import java.util.Objects;
import java.util.Optional;

/**
 * A powder that is mixed with liquid for one injection; what is not drawn is thrown away.
 *
 * @param diluent the volume that goes through all vials of one injection, above zero; the powder is taken to add none
 *     (common practice, no published source)
 * @param syringe draws the diluent and the dose
 * @param mixNeedle the needle for mixing
 * @param giveNeedle the needle for the injection
 */
public record MixedVial(Volume diluent, Syringe syringe, Needle mixNeedle, Needle giveNeedle) implements Device {
    public MixedVial {
        Objects.requireNonNull(diluent, "diluent");
        Objects.requireNonNull(syringe, "syringe");
        Objects.requireNonNull(mixNeedle, "mixNeedle");
        Objects.requireNonNull(giveNeedle, "giveNeedle");
        if (!syringe.hasLineAt(diluent)) {
            throw new Refusal(
                    diluent + " of diluent lies on no line of " + syringe.id(), "name a syringe that has a line there");
        }
    }

    @Override
    public String word() {
        return "mixed-vial";
    }

    @Override
    public Optional<CartridgePen> pen() {
        return Optional.empty();
    }

    @Override
    public Optional<MixedVial> mixedVial() {
        return Optional.of(this);
    }
}

package cyclepacket.plan;

import java.util.Objects;
import java.util.Optional;

/**
 * A pen that is thrown away whole when it is empty; its ledger is that of a cartridge.
 *
 * @param works dial, window, needle and days, as for a pen that takes cartridges
 */
public record DisposablePen(CartridgePen works) implements Device {
    public DisposablePen {
        Objects.requireNonNull(works, "works");
    }

    @Override
    public String word() {
        return "disposable-pen";
    }

    @Override
    public Optional<CartridgePen> pen() {
        return Optional.of(works);
    }
}

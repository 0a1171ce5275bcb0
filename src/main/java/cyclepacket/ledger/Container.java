package cyclepacket.ledger;

import cyclepacket.plan.Device.Window;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Plan;
import cyclepacket.quantity.Dose;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One cartridge or syringe at home.
 *
 * @param number from 1, in loading order; the number written on its box
 * @param stock which line of the plan's on-hand list it belongs to, from 0
 * @param label the amount on the box
 * @param least the least it may still give when the plan starts; for a pen that shows what is left, rounded down to a mark
 * @param most the most it may still give
 * @param opened when it was opened, if that was before this plan
 */
public record Container(
        int number,
        int stock,
        Dose label,
        Dose least,
        Dose most,
        Optional<String> lot,
        Optional<LocalDate> expires,
        Optional<LocalDate> opened) {
    public Container {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(least, "least");
        Objects.requireNonNull(most, "most");
        Objects.requireNonNull(lot, "lot");
        Objects.requireNonNull(expires, "expires");
        Objects.requireNonNull(opened, "opened");
    }

    /** Every container of one medicine, in loading order, without what was thrown away; a size that is not sold is left out. */
    public static List<Container> of(Medicine medicine, List<Plan.Stock> onHand) {
        List<Container> all = new ArrayList<>();
        int number = 0;
        for (int line = 0; line < onHand.size(); line++) {
            Plan.Stock stock = onHand.get(line);
            Optional<Medicine.Size> size = medicine.sizeLabelled(stock.size());
            for (int each = 0; each < stock.count() && size.isPresent(); each++) {
                number++;
                if (stock.discarded().isEmpty()) {
                    all.add(of(medicine, stock, line, size.get(), number));
                }
            }
        }
        return all;
    }

    private static Container of(Medicine medicine, Plan.Stock stock, int line, Medicine.Size size, int number) {
        return new Container(
                number,
                line,
                size.label(),
                usable(medicine, size.gives().least(), stock),
                usable(medicine, size.gives().most(), stock),
                stock.lot(),
                stock.expires(),
                stock.opened());
    }

    private static Dose usable(Medicine medicine, Dose content, Plan.Stock stock) {
        Dose used = stock.used().orElse(Dose.zero(content.unit())).min(content);
        Dose rest = content.minus(used);
        return medicine.device()
                .pen()
                .filter(pen -> pen.window() == Window.LEFT)
                .map(pen -> rest.toMultipleOf(pen.dial().step(), RoundingMode.FLOOR))
                .orElse(rest);
    }
}

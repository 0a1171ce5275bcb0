package cyclepacket.supply;

import cyclepacket.ledger.Draw;
import cyclepacket.ledger.Measuring;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Device;
import cyclepacket.plan.Device.Needle;
import cyclepacket.plan.DilutedVial;
import cyclepacket.plan.DrawnVial;
import cyclepacket.plan.KeptVial;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.MixedVial;
import cyclepacket.plan.OilVial;
import cyclepacket.plan.Syringe;
import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Counts empty syringes and the needles that mix, draw up and inject, for everything that comes in a vial. */
final class VialItems {
    private final int spares;
    private final Map<SupplyItem, Integer> counts = new LinkedHashMap<>();
    private int extraSwabs;

    /** @param spares how many of each needle and syringe are added */
    VialItems(int spares) {
        this.spares = spares;
    }

    /** @param undated doses to come that have no day yet */
    void add(MedicineLedger ledger, int undated) {
        Medicine medicine = ledger.medicine();
        List<Dose> doses = ledger.draws().stream()
                .filter(draw -> !draw.isRecorded())
                .map(Draw::dialled)
                .toList();
        int injections = doses.size() + undated;
        if (injections == 0) {
            return;
        }
        Device device = medicine.device();
        if (device instanceof MixedVial mixed) {
            count(mixed.syringe(), injections);
            count(SupplyItem.Kind.MIXING_NEEDLE, mixed.mixNeedle(), injections);
            count(SupplyItem.Kind.INJECTION_NEEDLE, mixed.giveNeedle(), injections);
            extraSwabs += doses.stream()
                            .mapToInt(dose -> Measuring.vials(medicine, dose))
                            .sum()
                    + undated;
        } else if (device instanceof KeptVial kept) {
            count(kept.syringe(), injections);
            count(SupplyItem.Kind.MIXING_NEEDLE, kept.mixNeedle(), vials(kept, medicine, doses, undated));
            count(SupplyItem.Kind.INJECTION_NEEDLE, kept.giveNeedle(), injections);
        } else if (device instanceof OilVial oil) {
            count(oil.syringe(), injections);
            count(SupplyItem.Kind.DRAWING_NEEDLE, oil.drawNeedle(), injections);
            count(SupplyItem.Kind.INJECTION_NEEDLE, oil.giveNeedle(), injections);
        } else if (device instanceof DrawnVial drawn) {
            count(drawn.syringe(), injections);
            count(SupplyItem.Kind.INJECTION_NEEDLE, drawn.needle(), injections);
        } else if (device instanceof DilutedVial diluted) {
            count(diluted.syringe(), injections);
            count(SupplyItem.Kind.INJECTION_NEEDLE, diluted.needle(), injections);
        }
    }

    /** One for each vial that is mixed, dose after dose, with what is lost each time; a dose without a day has its own. */
    private static int vials(KeptVial kept, Medicine medicine, List<Dose> doses, int undated) {
        long left = 0;
        int vials = undated;
        for (Dose dose : doses) {
            long takes = kept.takes(dose);
            if (left < takes) {
                vials++;
                left = kept.holds(medicine.sizes().get(0).label());
            }
            left -= takes;
        }
        return vials;
    }

    private void count(Syringe syringe, int count) {
        counts.merge(
                new SupplyItem(
                        SupplyItem.Kind.EMPTY_SYRINGE,
                        1,
                        Optional.empty(),
                        Optional.of(syringe.name()),
                        Optional.empty()),
                count,
                Integer::sum);
    }

    private void count(SupplyItem.Kind kind, Needle needle, int count) {
        counts.merge(
                new SupplyItem(kind, 1, Optional.empty(), Optional.empty(), Optional.of(needle)), count, Integer::sum);
    }

    /** Swabs for the rubber tops of vials that are mixed, besides those of every injection. */
    int extraSwabs() {
        return extraSwabs;
    }

    /** @param boxes how many a box holds as it is sold, by the item's key */
    List<SupplyItem> all(Map<String, Integer> boxes) {
        List<SupplyItem> items = new ArrayList<>();
        counts.forEach((item, count) -> items.add(new SupplyItem(
                item.kind(),
                count + spares,
                Optional.ofNullable(boxes.get(item.kind().key())),
                item.size(),
                item.needle())));
        return items;
    }
}

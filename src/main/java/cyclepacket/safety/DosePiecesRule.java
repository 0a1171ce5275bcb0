package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Taken;
import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.List;

/** A dose that is no whole number of tablets, capsules or patches, or of halves where these may be halved. */
final class DosePiecesRule extends Rule {
    DosePiecesRule() {
        super("DOSE-PIECES", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (OrderedAmount ordered : OrderedAmount.allWithHalves(plan)) {
            ordered.medicine()
                    .device()
                    .taken()
                    .filter(taken -> !isInPieces(ordered, taken))
                    .ifPresent(
                            taken -> found.add(
                                    stop(
                                            ordered.place(),
                                            ordered.amount() + " is no whole number of "
                                                    + taken.piece().word() + "s of "
                                                    + ordered.medicine()
                                                            .sizes()
                                                            .get(0)
                                                            .label(),
                                            "ask the prescriber for a dose in whole pieces, or the pharmacist whether it may be halved")));
        }
        return found;
    }

    private static boolean isInPieces(OrderedAmount ordered, Taken taken) {
        Dose label = ordered.medicine().sizes().get(0).label();
        Dose doubled = ordered.amount().times(2);
        return ordered.amount().isMultipleOf(label) || (taken.halves() && doubled.isMultipleOf(label));
    }
}

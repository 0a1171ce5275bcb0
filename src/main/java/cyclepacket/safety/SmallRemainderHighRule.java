package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Device;
import cyclepacket.plan.Medicine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** A small remainder that no setting of a pen reaches: then every number in the window would be a small one. */
final class SmallRemainderHighRule extends Rule {
    SmallRemainderHighRule() {
        super("SMALL-REMAINDER-HIGH", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Finding> found = new ArrayList<>();
        for (Medicine medicine : plan.files().medicines().values()) {
            BigDecimal below = plan.clinic()
                    .rules()
                    .smallRemainder()
                    .belowIn(medicine.unit())
                    .orElse(BigDecimal.ZERO);
            medicine.device()
                    .pen()
                    .map(Device.CartridgePen::dial)
                    .filter(dial -> below.compareTo(dial.most().number()) >= 0)
                    .ifPresent(dial -> found.add(stop(
                            plan.inClinic("/house-rules/small-remainder/below"),
                            "a remainder below " + below.toPlainString() + " counts as small, and " + medicine.id()
                                    + " gives at most " + dial.most() + " at once",
                            "write a number below the largest setting of every pen")));
        }
        return found;
    }
}

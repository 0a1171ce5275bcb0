package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Device;
import cyclepacket.plan.Medicine;
import java.util.List;
import java.util.Optional;

/** Two pens in one plan whose windows show opposite things: one what is owed, one what is left. */
final class WindowsOpposedRule extends Rule {
    WindowsOpposedRule() {
        super("WINDOWS-OPPOSED", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        Optional<Medicine> owed = first(plan, Device.Window.OWED);
        Optional<Medicine> left = first(plan, Device.Window.LEFT);
        if (owed.isEmpty() || left.isEmpty()) {
            return List.of();
        }
        return List.of(warn(
                plan.inMedicine(left.get().id(), "/window"),
                "the window of " + owed.get().id() + " shows what is owed, the window of "
                        + left.get().id() + " what is left",
                "teach the two pens one after the other, ask for one kind"));
    }

    private static Optional<Medicine> first(ComputedPlan plan, Device.Window window) {
        return plan.files().medicines().values().stream()
                .filter(medicine -> medicine.device()
                        .pen()
                        .filter(pen -> pen.window() == window)
                        .isPresent())
                .findFirst();
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.plan.Anchor;
import java.util.List;

/** Until the start is told on the phone, nothing in the packet is an instruction. */
final class StartNotCalledRule extends Rule {
    StartNotCalledRule() {
        super("START-NOT-CALLED", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        Anchor start = plan.course().start();
        if (!plan.plan().anchors().containsKey(start) || plan.course().anchors().lastCall(start) >= 0) {
            return List.of();
        }
        Place place = plan.inPlan("/called");
        if (!plan.plan().record().isEmpty()) {
            return List.of(warn(
                    place,
                    "injections are in the record, and no line says that the start was called",
                    "write the call of " + start + " that was made"));
        }
        return List.of(note(
                place,
                "the start is not called yet, so every page says that nothing starts before our call",
                "write the call of " + start + " once it was made and read back"));
    }
}

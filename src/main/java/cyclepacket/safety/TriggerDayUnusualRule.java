package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.Protocol;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** The trigger comes before the least or after the most evenings of stimulation that the protocol names. */
final class TriggerDayUnusualRule extends Rule {
    TriggerDayUnusualRule() {
        super("TRIGGER-DAY-UNUSUAL", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        Optional<Protocol.StimulationDays> days = plan.protocol().stimulationDays();
        if (days.isEmpty()) {
            return List.of();
        }
        Protocol.StimulationDays expected = days.get();
        return evenings(plan).stream()
                .filter(count -> count > 0 && (count < expected.least() || count > expected.most()))
                .map(count -> warn(
                        plan.triggerPlace(),
                        "the trigger comes after " + Phrases.count(count, "evening")
                                + " of stimulation; the protocol expects " + expected.least() + " to "
                                + expected.most(),
                        "check R and S1, and ask the prescriber"))
                .toList();
    }

    /** Evenings from S1 to the day before the trigger; zero or less when the trigger comes first. */
    static Optional<Long> evenings(ComputedPlan plan) {
        return plan.course()
                .anchors()
                .date(Anchor.S1)
                .flatMap(first ->
                        plan.course().anchors().date(Anchor.T).map(evening -> ChronoUnit.DAYS.between(first, evening)));
    }
}

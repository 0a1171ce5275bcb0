package cyclepacket.safety;

import cyclepacket.finding.Finding;
import java.time.LocalTime;
import java.util.List;

/** The hour by which a patient without a call rings us must come before the injection it is about. */
final class NoCallByLateRule extends Rule {
    private static final LocalTime NOON = LocalTime.NOON;

    NoCallByLateRule() {
        super("NO-CALL-BY-LATE", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        LocalTime latest = plan.clinic().rules().noCallBy();
        return plan.course().doses().stream()
                .filter(dose -> dose.isProvisional() && !dose.isExact())
                .map(dose -> dose.at().toLocalTime())
                .filter(at -> !at.isBefore(NOON))
                .min(LocalTime::compareTo)
                .filter(at -> !latest.isBefore(at))
                .map(at -> warn(
                        plan.inClinic("/house-rules/no-call-by"),
                        "a patient without a call would ring at " + latest + ", and the injection is at " + at,
                        "write an earlier hour"))
                .stream()
                .toList();
    }
}

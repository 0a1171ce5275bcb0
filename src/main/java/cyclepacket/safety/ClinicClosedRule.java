package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.plan.Clinic;
import cyclepacket.plan.Protocol;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A visit, and so a call, on a day without clinic hours. */
final class ClinicClosedRule extends Rule {
    ClinicClosedRule() {
        super("CLINIC-CLOSED", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Protocol.Visit> visits = plan.protocol().visits();
        List<Finding> found = new ArrayList<>();
        for (int index = 0; index < visits.size(); index++) {
            Place place = plan.inProtocol("/visits/" + index + "/on");
            plan.course()
                    .anchors()
                    .date(visits.get(index).on())
                    .filter(day -> !day.isBefore(plan.preparedOn()) && isClosed(plan.clinic(), day))
                    .ifPresent(day -> found.add(warn(
                            place,
                            "a visit is on " + Phrases.day(day)
                                    + ", when the clinic is closed, and a call is due after it",
                            "move the visit, or say who makes the call")));
        }
        return found;
    }

    private static boolean isClosed(Clinic clinic, LocalDate day) {
        DayOfWeek weekday = day.getDayOfWeek();
        return weekday == DayOfWeek.SATURDAY
                || weekday == DayOfWeek.SUNDAY
                || clinic.closed().contains(day);
    }
}

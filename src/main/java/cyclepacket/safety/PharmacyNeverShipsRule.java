package cyclepacket.safety;

import cyclepacket.finding.Finding;
import cyclepacket.supply.PharmacyDays;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** By the clinic file the pharmacy ships on no day of the whole course, for example because it is closed all year. */
final class PharmacyNeverShipsRule extends Rule {
    /** Days past the course that are looked at; common practice, no published source. */
    private static final int TWO_WEEKS = 14;

    PharmacyNeverShipsRule() {
        super("PHARMACY-NEVER-SHIPS", Sums.UNTOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        LocalDate today = plan.preparedOn();
        LocalDate last = plan.lastPossibleDay().orElse(today);
        int days = (int) Math.max(TWO_WEEKS, ChronoUnit.DAYS.between(today, last) + 1);
        PharmacyDays calendar =
                new PharmacyDays(plan.clinic().pharmacy(), plan.clinic().zone());
        if (calendar.shipsWithin(today, days)) {
            return List.of();
        }
        return List.of(warn(
                plan.inClinic("/pharmacy"),
                "the pharmacy ships on no day from " + Phrases.day(today) + " to "
                        + Phrases.day(today.plusDays(days - 1L)),
                "check ships and closed, and call the pharmacy"));
    }
}

package cyclepacket.safety;

import cyclepacket.course.DatedDose;
import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.plan.Protocol;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Two rows that give one medicine on one evening: the page would print both amounts in full. Two different times may be
 * meant, and are asked about; the same time, or an exact row, is a dose that stands there twice.
 */
final class RowsOverlapRule extends Rule {
    RowsOverlapRule() {
        super("ROWS-OVERLAP", Sums.TOUCHED);
    }

    @Override
    List<Finding> findings(ComputedPlan plan) {
        List<Protocol.Row> rows = plan.protocol().rows();
        List<Map<LocalDate, DatedDose>> doses = dosesByRow(plan);
        List<Finding> found = new ArrayList<>();
        for (int later = 1; later < rows.size(); later++) {
            for (int earlier = 0; earlier < later; earlier++) {
                if (rows.get(earlier).medicine().equals(rows.get(later).medicine())) {
                    pair(plan, earlier, later, doses).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    /** The first dose of each day, row by row: looked for in all doses, long protocols took hours. */
    private static List<Map<LocalDate, DatedDose>> dosesByRow(ComputedPlan plan) {
        List<Map<LocalDate, DatedDose>> byRow = new ArrayList<>();
        plan.protocol().rows().forEach(row -> byRow.add(new LinkedHashMap<>()));
        for (DatedDose dose : plan.course().doses()) {
            byRow.get(dose.row()).putIfAbsent(dose.date(), dose);
        }
        return byRow;
    }

    private Optional<Finding> pair(ComputedPlan plan, int earlier, int later, List<Map<LocalDate, DatedDose>> doses) {
        Protocol.Row one = plan.protocol().rows().get(earlier);
        Protocol.Row other = plan.protocol().rows().get(later);
        Place place = plan.inProtocol("/rows/" + later);
        if (areTwoParts(one, other)) {
            return Optional.empty();
        }
        if (one.isExact() && other.isExact() && one.firstDay().equals(other.firstDay())) {
            // Known before the trigger has a date, so that it is not found on its evening.
            return Optional.of(
                    twice(place, "two rows give " + one.medicine() + " at the exact time of " + one.firstDay()));
        }
        return doses.get(earlier).values().stream()
                .filter(dose -> doses.get(later).containsKey(dose.date()))
                .findFirst()
                .map(dose -> finding(place, dose, doses.get(later).get(dose.date())));
    }

    /** Two parts of one trigger, some hours apart, are meant to be two. */
    private static boolean areTwoParts(Protocol.Row one, Protocol.Row other) {
        return one.isTrigger()
                && other.isTrigger()
                && !one.pattern().hoursAfter().equals(other.pattern().hoursAfter());
    }

    private Finding finding(Place place, DatedDose one, DatedDose other) {
        String both = "two rows give " + one.medicine() + " on " + Phrases.day(one.date()) + ", "
                + one.amount() + " at " + Phrases.hour(one.at()) + " and " + other.amount() + " at "
                + Phrases.hour(other.at());
        boolean isTwice = one.at().isEqual(other.at()) || one.isExact() || other.isExact();
        return isTwice
                ? twice(place, both)
                : warn(place, both, "ask the prescriber whether both amounts are meant, each in full");
    }

    private Finding twice(Place place, String text) {
        return stop(place, text, "take out the row that does not hold, after reading the order");
    }
}

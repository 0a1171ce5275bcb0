package cyclepacket.safety;

import cyclepacket.course.DatedDose;
import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.plan.Protocol;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
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
        List<Finding> found = new ArrayList<>();
        for (int later = 1; later < rows.size(); later++) {
            for (int earlier = 0; earlier < later; earlier++) {
                if (rows.get(earlier).medicine().equals(rows.get(later).medicine())) {
                    pair(plan, earlier, later).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    private Optional<Finding> pair(ComputedPlan plan, int earlier, int later) {
        Protocol.Row one = plan.protocol().rows().get(earlier);
        Protocol.Row other = plan.protocol().rows().get(later);
        Place place = plan.inProtocol("/rows/" + later);
        if (one.isExact() && other.isExact() && one.firstDay().equals(other.firstDay())) {
            // Known before the trigger has a date, so that it is not found on its evening.
            return Optional.of(
                    twice(place, "two rows give " + one.medicine() + " at the exact time of " + one.firstDay()));
        }
        return firstShared(plan, earlier, later).map(doses -> finding(place, doses.get(0), doses.get(1)));
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

    private static Optional<List<DatedDose>> firstShared(ComputedPlan plan, int earlier, int later) {
        for (DatedDose one : plan.course().doses()) {
            if (one.row() == earlier) {
                Optional<DatedDose> other = doseOf(plan, later, one.date());
                if (other.isPresent()) {
                    return Optional.of(List.of(one, other.get()));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<DatedDose> doseOf(ComputedPlan plan, int row, LocalDate date) {
        return plan.course().doses().stream()
                .filter(dose -> dose.row() == row && dose.date().equals(date))
                .findFirst();
    }
}

package cyclepacket.actingout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The settings of a plan without a past, one after the other, with their running totals in a chosen unit. */
final class Timeline {
    private final Case plan;
    private final List<Long> totals = new ArrayList<>(List.of(0L));
    private final List<Integer> eveningOf = new ArrayList<>();
    private final List<Integer> settingOf = new ArrayList<>();
    private final List<Long> beforeEvening = new ArrayList<>();

    /** @param unit thousandths in one unit of the totals; divides every setting */
    Timeline(Case plan, long unit) {
        this.plan = plan;
        long total = 0;
        for (int evening = 0; evening < plan.evenings().size(); evening++) {
            beforeEvening.add(total);
            List<Long> settings = plan.evenings().get(evening).settings();
            for (int setting = 0; setting < settings.size(); setting++) {
                total += settings.get(setting) / unit;
                totals.add(total);
                eveningOf.add(evening);
                settingOf.add(setting + 1);
            }
        }
    }

    int turns() {
        return eveningOf.size();
    }

    long totalBefore(int turn) {
        return totals.get(turn);
    }

    long totalBeforeEvening(int evening) {
        return beforeEvening.get(evening);
    }

    LocalDate dateOf(int turn) {
        return plan.evenings().get(eveningOf.get(turn)).date();
    }

    int settingOf(int turn) {
        return settingOf.get(turn);
    }

    /** The first evening that finds a box past its days if it is opened with this turn. */
    Optional<Integer> eveningPastDaysOf(int box, int turn) {
        LocalDate lastDay = plan.lastDayOf(box, dateOf(turn));
        for (int evening = 0; evening < plan.evenings().size(); evening++) {
            if (plan.evenings().get(evening).date().isAfter(lastDay)) {
                return Optional.of(evening);
            }
        }
        return Optional.empty();
    }
}

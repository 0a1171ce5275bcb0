package cyclepacket.safety;

import cyclepacket.finding.Place;
import cyclepacket.plan.HouseRules;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Plan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One line of containers that were begun before this plan, or that look so. */
record OpenedStock(Medicine medicine, int index, Plan.Stock stock) {

    static List<OpenedStock> all(ComputedPlan plan) {
        List<OpenedStock> all = new ArrayList<>();
        for (Medicine medicine : plan.files().medicines().values()) {
            List<Plan.Stock> lines = plan.plan().onHand().getOrDefault(medicine.id(), List.of());
            for (int index = 0; index < lines.size(); index++) {
                Plan.Stock stock = lines.get(index);
                if (stock.opened().isPresent() || stock.used().isPresent()) {
                    all.add(new OpenedStock(medicine, index, stock));
                }
            }
        }
        return all;
    }

    Place place(ComputedPlan plan, String key) {
        return plan.inPlan("/on-hand/" + medicine.id() + "/" + index + "/" + key);
    }

    /** The last day it may be used by the clinic's count; empty without an opening date or a limit. */
    Optional<LocalDate> lastUsable(HouseRules.InUseDayOne dayOne) {
        return stock.opened()
                .flatMap(opened -> medicine.device().daysOnceOpened().map(days -> switch (dayOne) {
                    case FIRST_USE -> opened.plusDays(days - 1L);
                    case DAY_AFTER -> opened.plusDays(days);
                }));
    }
}

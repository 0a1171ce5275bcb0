package cyclepacket.safety;

import cyclepacket.course.DatedDose;
import cyclepacket.finding.Place;
import cyclepacket.ledger.Draw;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Medicine;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Everything of one medicine on one day: all settings of all rows. What was given replaces what was ordered; what
 * nobody knows counts as given.
 *
 * @param isOver whether the whole day is in the record, so that it is a fact and no order
 */
record DailyTotal(Medicine medicine, LocalDate date, Dose total, boolean isOver, Place place) {

    static List<DailyTotal> all(ComputedPlan plan) {
        List<DailyTotal> all = new ArrayList<>();
        for (MedicineLedger ledger : plan.ledger().medicines()) {
            Map<LocalDate, List<Draw>> days = new TreeMap<>();
            ledger.draws()
                    .forEach(draw -> days.computeIfAbsent(draw.date(), day -> new ArrayList<>())
                            .add(draw));
            days.forEach((date, draws) -> all.add(of(plan, ledger.medicine(), date, draws)));
        }
        return all;
    }

    private static DailyTotal of(ComputedPlan plan, Medicine medicine, LocalDate date, List<Draw> draws) {
        Dose total = draws.stream()
                .map(draw -> draw.given().orElse(draw.dialled()))
                .reduce(Dose.zero(medicine.unit()), Dose::plus);
        boolean isOver = draws.stream().allMatch(Draw::isRecorded);
        Place recorded = draws.stream()
                .flatMap(draw -> draw.recordLine().stream())
                .findFirst()
                .map(line -> plan.inPlan("/record/" + line))
                .orElse(plan.inPlan("/doses/" + medicine.id()));
        Place ordered = plan.course().dosesOf(medicine.id()).stream()
                .filter(dose -> dose.date().equals(date))
                .max(Comparator.comparing(DatedDose::amount))
                .map(plan::amountOf)
                .orElse(recorded);
        return new DailyTotal(medicine, date, total, isOver, isOver ? recorded : ordered);
    }

    boolean isAbove(Function<Medicine.DailyLimit, Dose> limit) {
        return medicine.daily()
                .map(limit)
                .filter(most -> total.isMoreThan(most))
                .isPresent();
    }

    /** The first day of each place, so that one order gives one finding however many days it lasts. */
    static List<DailyTotal> firstOfEachPlace(List<DailyTotal> totals) {
        Map<Place, DailyTotal> first = new LinkedHashMap<>();
        totals.forEach(total ->
                first.merge(total.place(), total, (one, other) -> other.total().isMoreThan(one.total()) ? other : one));
        return List.copyOf(first.values());
    }
}

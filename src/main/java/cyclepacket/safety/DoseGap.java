package cyclepacket.safety;

import cyclepacket.course.DatedDose;
import cyclepacket.course.LocalTimes;
import cyclepacket.course.Trigger;
import cyclepacket.finding.Place;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.RecordLine;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Two doses, or the last dose and the trigger, that lie too far apart.
 *
 * @param end what the later one is
 * @param missed the line of the record that says why, if it does
 */
record DoseGap(
        Medicine medicine, ZonedDateTime from, ZonedDateTime to, String end, Place place, Optional<Integer> missed) {

    /** Gaps as the course was planned, whatever happened. */
    static List<DoseGap> planned(ComputedPlan plan) {
        return gaps(plan, medicine -> plan.course().dosesOf(medicine.id()));
    }

    /** Gaps that evenings without an injection left, or evenings of which nobody knows. */
    static List<DoseGap> happened(ComputedPlan plan) {
        return gaps(
                        plan,
                        medicine -> plan.course().dosesOf(medicine.id()).stream()
                                .filter(dose -> isGiven(plan, dose))
                                .toList())
                .stream()
                .filter(gap -> gap.missed().isPresent())
                .toList();
    }

    private static boolean isGiven(ComputedPlan plan, DatedDose dose) {
        return plan.ledger()
                .of(dose.medicine())
                .flatMap(ledger -> ledger.day(dose.date()))
                .map(LedgerDay::evening)
                .map(evening -> evening.isToCome()
                        || evening.given().filter(amount -> !amount.isZero()).isPresent())
                .orElse(true);
    }

    private static List<DoseGap> gaps(ComputedPlan plan, Function<Medicine, List<DatedDose>> dosesOf) {
        List<DoseGap> found = new ArrayList<>();
        for (Medicine medicine : plan.files().medicines().values()) {
            if (medicine.mostHoursBetween().isPresent()) {
                addGaps(plan, medicine, dosesOf.apply(medicine), found);
            }
        }
        return found;
    }

    private static void addGaps(ComputedPlan plan, Medicine medicine, List<DatedDose> doses, List<DoseGap> found) {
        for (int next = 1; next < doses.size(); next++) {
            DatedDose dose = doses.get(next);
            Place place = plan.inProtocol("/rows/" + dose.row());
            add(plan, medicine, doses.get(next - 1), dose.date(), dose.at(), "the next dose", place, found);
        }
        Optional<Trigger> trigger = plan.course().anchors().trigger();
        if (trigger.isPresent() && !doses.isEmpty()) {
            DatedDose last = doses.get(doses.size() - 1);
            Trigger end = trigger.get();
            add(plan, medicine, last, end.evening(), end.at(), "the trigger", plan.triggerPlace(), found);
        }
    }

    private static void add(
            ComputedPlan plan,
            Medicine medicine,
            DatedDose last,
            LocalDate evening,
            ZonedDateTime to,
            String end,
            Place place,
            List<DoseGap> found) {
        long minutes = LocalTimes.elapsedMinutes(last.at(), to);
        boolean tooLong = minutes > medicine.mostHoursBetween().orElseThrow().toMinutes();
        boolean skipsEvening = ChronoUnit.DAYS.between(last.date(), evening) > 1;
        if (tooLong || skipsEvening) {
            Optional<Integer> missed = missedBetween(plan, medicine, last.date(), evening);
            found.add(new DoseGap(medicine, last.at(), to, end, place, missed));
        }
    }

    private static Optional<Integer> missedBetween(
            ComputedPlan plan, Medicine medicine, LocalDate after, LocalDate before) {
        List<RecordLine> record = plan.plan().record();
        return IntStream.range(0, record.size())
                .filter(line -> record.get(line).medicine().equals(medicine.id()))
                .filter(line -> record.get(line).date().isAfter(after)
                        && record.get(line).date().isBefore(before))
                .boxed()
                .findFirst();
    }

    String words() {
        return medicine.id() + ": " + Phrases.hours(LocalTimes.elapsedMinutes(from, to)) + " pass from "
                + Phrases.at(from) + " to " + end + ", " + Phrases.at(to) + "; the product allows "
                + Phrases.hours(medicine.mostHoursBetween().orElseThrow().toMinutes())
                + " and no evening without it";
    }
}

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
import java.util.function.Predicate;
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
        return gaps(plan, dose -> true);
    }

    /** Gaps that evenings without an injection left, or evenings of which nobody knows. */
    static List<DoseGap> happened(ComputedPlan plan) {
        return gaps(plan, dose -> isGiven(plan, dose)).stream()
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

    private static List<DoseGap> gaps(ComputedPlan plan, Predicate<DatedDose> counts) {
        List<DoseGap> found = new ArrayList<>();
        for (Medicine medicine : plan.files().medicines().values()) {
            if (medicine.mostHoursBetween().isPresent()) {
                List<DatedDose> doses = plan.course().dosesOf(medicine.id()).stream()
                        .filter(counts)
                        .toList();
                found.addAll(new Walk(plan, medicine, doses).gaps());
            }
        }
        return found;
    }

    String words() {
        return medicine.id() + ": " + Phrases.hours(LocalTimes.elapsedMinutes(from, to)) + " pass from "
                + Phrases.at(from) + " to " + end + ", " + Phrases.at(to) + "; the product allows "
                + Phrases.hours(medicine.mostHoursBetween().orElseThrow().toMinutes())
                + " and no evening without it";
    }

    /** One walk over the doses of one medicine, to the trigger where it is known. */
    private record Walk(ComputedPlan plan, Medicine medicine, List<DatedDose> doses) {

        List<DoseGap> gaps() {
            List<DoseGap> gaps = new ArrayList<>();
            for (int next = 1; next < doses.size(); next++) {
                DatedDose last = doses.get(next - 1);
                DatedDose dose = doses.get(next);
                Place place = plan.inProtocol("/rows/" + dose.row());
                if (isTooFar(last, dose.date(), dose.at())) {
                    gaps.add(gap(last, dose.date(), dose.at(), "the next dose", place));
                }
            }
            Optional<Trigger> trigger = plan.course().anchors().trigger();
            if (trigger.isPresent() && !doses.isEmpty()) {
                DatedDose last = doses.get(doses.size() - 1);
                Trigger end = trigger.get();
                if (isTooFar(last, end.evening(), end.at())) {
                    gaps.add(gap(last, end.evening(), end.at(), "the trigger", plan.triggerPlace()));
                }
            }
            return gaps;
        }

        private boolean isTooFar(DatedDose last, LocalDate evening, ZonedDateTime at) {
            long most = medicine.mostHoursBetween().orElseThrow().toMinutes();
            return LocalTimes.elapsedMinutes(last.at(), at) > most || ChronoUnit.DAYS.between(last.date(), evening) > 1;
        }

        private DoseGap gap(DatedDose last, LocalDate evening, ZonedDateTime at, String end, Place place) {
            List<RecordLine> record = plan.plan().record();
            Optional<Integer> missed = IntStream.range(0, record.size())
                    .filter(line -> record.get(line).medicine().equals(medicine.id()))
                    .filter(line -> record.get(line).date().isAfter(last.date()))
                    .filter(line -> record.get(line).date().isBefore(evening))
                    .boxed()
                    .findFirst();
            return new DoseGap(medicine, last.at(), at, end, place, missed);
        }
    }
}

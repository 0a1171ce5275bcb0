package cyclepacket.page;

import cyclepacket.course.Course;
import cyclepacket.course.DatedDose;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.ledger.Evening;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol;
import cyclepacket.supply.SupplyPlan;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Everything a packet is made from.
 *
 * @param code the short code that only this issue has
 * @param draft true until a second person has countersigned
 * @param replacedOn the day the replaced issue was prepared, where that is known
 * @param earlier the replaced issue, computed again from its stored plan; empty when there is none or it is lost
 */
public record PacketFacts(
        PlanFiles files,
        Course course,
        CycleLedger ledger,
        SupplyPlan supply,
        String code,
        boolean draft,
        Optional<LocalDate> replacedOn,
        Optional<PacketFacts> earlier) {
    public PacketFacts {
        Objects.requireNonNull(files, "files");
        Objects.requireNonNull(course, "course");
        Objects.requireNonNull(ledger, "ledger");
        Objects.requireNonNull(supply, "supply");
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(replacedOn, "replacedOn");
        Objects.requireNonNull(earlier, "earlier");
    }

    /** An issue whose replaced one, if any, is lost. */
    public PacketFacts(
            PlanFiles files,
            Course course,
            CycleLedger ledger,
            SupplyPlan supply,
            String code,
            boolean draft,
            Optional<LocalDate> replacedOn) {
        this(files, course, ledger, supply, code, draft, replacedOn, Optional.empty());
    }

    /** The day that counts as today: evenings before it are past. */
    LocalDate today() {
        return files.plan().prepared().on();
    }

    /** The medicines given day by day, in the order of the protocol. */
    List<MedicineLedger> daily() {
        return ledger.medicines().stream()
                .filter(medicine -> !isExact(medicine.medicine()))
                .filter(medicine -> !medicine.days().isEmpty())
                .toList();
    }

    /** The doses at the exact minute of the trigger. */
    List<DatedDose> exact() {
        return course.doses().stream().filter(DatedDose::isExact).toList();
    }

    private boolean isExact(Medicine medicine) {
        return files.protocol().rows().stream().anyMatch(row -> row.medicine().equals(medicine.id()) && row.isExact())
                || exact().stream().anyMatch(dose -> dose.medicine().equals(medicine.id()));
    }

    /** The medicines that the protocol gives at the trigger's instant. */
    List<Protocol.Row> exactRows() {
        return files.protocol().rows().stream().filter(Protocol.Row::isExact).toList();
    }

    /** The evening after the last one listed, when the course waits for a trigger that was not called. */
    Optional<LocalDate> notFinished() {
        if (exactRows().isEmpty() || course.isTriggerCalled()) {
            return Optional.empty();
        }
        return daily().stream()
                .flatMap(medicine -> medicine.days().stream())
                .map(day -> day.evening().date())
                .max(LocalDate::compareTo)
                .map(last -> last.plusDays(1));
    }

    /** Whether any evening to come waits for a call. */
    boolean waitsForCall() {
        return daily().stream()
                .flatMap(medicine -> medicine.days().stream())
                .anyMatch(day -> day.evening().state() == Evening.State.PROVISIONAL);
    }

    /** The time of day that most doses to come share, in the patient's zone; of all doses when none is to come. */
    Optional<LocalTime> sharedTime() {
        return sharedTime(evening -> evening.isToCome() && !evening.date().isBefore(today()))
                .or(() -> sharedTime(evening -> true));
    }

    private Optional<LocalTime> sharedTime(Predicate<Evening> counts) {
        Map<LocalTime, Long> times = daily().stream()
                .flatMap(medicine -> medicine.days().stream())
                .filter(day -> counts.test(day.evening()))
                .flatMap(day -> day.evening().at().stream())
                .map(ZonedDateTime::toLocalTime)
                .collect(Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()));
        return times.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    /** The time of an evening, where it is not the shared one. */
    Optional<LocalTime> ownTime(Evening evening) {
        return evening.at()
                .map(ZonedDateTime::toLocalTime)
                .filter(time -> !sharedTime().equals(Optional.of(time)));
    }
}

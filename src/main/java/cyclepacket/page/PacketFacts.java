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

    /** The name of a medicine; with its door name where another of this plan is called the same. */
    String nameOf(Medicine medicine) {
        boolean isShared = files.medicines().values().stream()
                .anyMatch(other ->
                        !other.id().equals(medicine.id()) && other.name().equals(medicine.name()));
        return isShared ? medicine.name() + " (" + medicine.doorName() + ")" : medicine.name();
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

    /** Whether the medicine is a part of the trigger. */
    boolean isExact(Medicine medicine) {
        return files.protocol().rows().stream().anyMatch(row -> row.medicine().equals(medicine.id()) && row.isTrigger())
                || exact().stream().anyMatch(dose -> dose.medicine().equals(medicine.id()));
    }

    /** The medicines that the protocol gives as parts of the trigger. */
    List<Protocol.Row> exactRows() {
        return files.protocol().rows().stream().filter(Protocol.Row::isTrigger).toList();
    }

    /** Whether the patient is told when to stop it, so that the last day listed is not its end. */
    boolean goesOn(String medicine) {
        return files.protocol().rows().stream()
                .anyMatch(row -> row.medicine().equals(medicine)
                        && row.pattern().stopRule().isPresent());
    }

    /** Whether a row of this medicine waits for the day that is told on the phone. */
    boolean waits(Medicine medicine) {
        return waiting().contains(medicine);
    }

    /** The medicines whose first day is told on the phone and was not yet, in the order of the protocol. */
    List<Medicine> waiting() {
        return course.waiting().stream()
                .map(row -> files.medicine(row.medicine()).orElseThrow())
                .distinct()
                .toList();
    }

    /** The times of one medicine on one day, in order, where it is given at more than one. */
    List<LocalTime> timesOn(Medicine medicine, LocalDate date) {
        List<LocalTime> times = course.dosesOf(medicine.id()).stream()
                .filter(dose -> dose.date().equals(date))
                .map(dose -> dose.at().toLocalTime())
                .toList();
        return times.size() > 1 ? times : List.of();
    }

    /** The times of day of one medicine, where every one of its days has the same; else none. */
    List<LocalTime> constantTimes(Medicine medicine) {
        Map<LocalDate, List<LocalTime>> days = course.dosesOf(medicine.id()).stream()
                .filter(dose -> !dose.isExact())
                .collect(Collectors.groupingBy(
                        DatedDose::date,
                        TreeMap::new,
                        Collectors.mapping(dose -> dose.at().toLocalTime(), Collectors.toList())));
        List<List<LocalTime>> distinct = days.values().stream().distinct().toList();
        return distinct.size() == 1 ? distinct.get(0) : List.of();
    }

    /** Whether the shared time is before noon, or several times a day are kept, so that no page may say evening. */
    boolean isAroundTheDay() {
        return sharedTime().filter(time -> time.isBefore(LocalTime.NOON)).isPresent()
                || daily().stream()
                        .anyMatch(ledger -> ledger.days().stream()
                                .anyMatch(day -> !timesOn(
                                                ledger.medicine(), day.evening().date())
                                        .isEmpty()));
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

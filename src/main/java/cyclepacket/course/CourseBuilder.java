package cyclepacket.course;

import cyclepacket.plan.Anchor;
import cyclepacket.plan.DayMark;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Dates the rows of one protocol for one plan. */
final class CourseBuilder {
    private final PlanFiles files;
    private final Plan plan;
    private final Protocol protocol;
    private final Anchors anchors;
    private final ZoneId home;
    private final Set<CourseDoubt> doubts = new LinkedHashSet<>();
    private final List<DatedDose> doses = new ArrayList<>();
    private final List<HeldDose> held = new ArrayList<>();
    private final Shifts shifts;

    CourseBuilder(PlanFiles files) {
        this.files = files;
        plan = files.plan();
        protocol = files.protocol();
        anchors = Anchors.of(files);
        home = plan.patient().zone();
        shifts = new Shifts(plan.revised());
    }

    Course build() {
        doubts.addAll(anchors.doubts());
        List<DatedVisit> visits = visits();
        Optional<DatedVisit> next = visits.stream()
                .filter(visit -> visit.date().isAfter(plan.prepared().on()))
                .findFirst();
        for (int row = 0; row < protocol.rows().size(); row++) {
            if (protocol.rows().get(row).isExact()) {
                addExact(row);
            } else {
                addDaily(row, next.map(DatedVisit::date));
            }
        }
        doses.sort(
                Comparator.comparing((DatedDose dose) -> dose.at().toInstant()).thenComparingInt(DatedDose::row));
        return new Course(anchors, doses, visits, next, List.copyOf(doubts), held, shifts.cancelledFrom());
    }

    private void addExact(int index) {
        Protocol.Row row = protocol.rows().get(index);
        boolean onTrigger = row.firstDay() instanceof DayMark.FromAnchor mark
                && mark.from().equals(Anchor.T)
                && mark.daysAfter() == 0;
        if (!onTrigger) {
            doubts.add(new CourseDoubt(
                    CourseDoubt.Kind.EXACT_WITHOUT_TRIGGER,
                    false,
                    "/rows/" + index + "/at",
                    row.firstDay().toString()));
            return;
        }
        Optional<Trigger> trigger = anchors.trigger();
        if (trigger.isEmpty()) {
            return;
        }
        LocalDate evening = trigger.get().evening();
        if (shifts.isCancelledOn(evening)) {
            return;
        }
        String medicine = shifts.product(row.medicine(), evening);
        amountOn(row, medicine, evening)
                .ifPresentOrElse(
                        found -> doses.add(new DatedDose(
                                evening,
                                "T",
                                medicine,
                                found.amount(),
                                trigger.get().at(),
                                true,
                                !trigger.get().isCalled(),
                                index,
                                found.line())),
                        () -> doubts.add(doseAbsent(medicine, evening)));
    }

    private void addDaily(int index, Optional<LocalDate> provisionalFrom) {
        Protocol.Row row = protocol.rows().get(index);
        Optional<LocalDate> first = dated(row.firstDay());
        Optional<LocalDate> last = dated(row.lastDay());
        LocalTime time = plan.times().get(row.time());
        if (first.isEmpty() || last.isEmpty() || time == null) {
            return;
        }
        LocalDate start = shifts.firstDay(row.medicine(), first.get());
        for (LocalDate day = start; !day.isAfter(last.get()); day = day.plusDays(1)) {
            String medicine = shifts.product(row.medicine(), day);
            // A stop or a start may name either product; both mean this row.
            boolean isOn = shifts.isOn(row.medicine(), day, first.get())
                    && (medicine.equals(row.medicine()) || shifts.isOn(medicine, day, first.get()));
            if (isOn) {
                addDay(index, medicine, day, time, provisionalFrom);
            }
        }
    }

    private void addDay(
            int index, String medicine, LocalDate day, LocalTime usual, Optional<LocalDate> provisionalFrom) {
        Protocol.Row row = protocol.rows().get(index);
        boolean provisional = provisionalFrom.isPresent() && !day.isBefore(provisionalFrom.get());
        ZonedDateTime at = clock(day, shifts.hour(row.time(), day, usual), home, "/times/" + row.time());
        if (shifts.isHeld(medicine, day)) {
            held.add(new HeldDose(day, dayName(day), medicine, at, provisional));
            return;
        }
        Optional<Amount> found = amountOn(row, medicine, day);
        if (found.isEmpty()) {
            doubts.add(doseAbsent(medicine, day));
            return;
        }
        doses.add(new DatedDose(
                day,
                dayName(day),
                medicine,
                found.get().amount(),
                at,
                false,
                provisional,
                index,
                found.get().line()));
    }

    private Optional<LocalDate> dated(DayMark mark) {
        Optional<LocalDate> date = anchors.latestDate(mark);
        if (date.isEmpty()) {
            mark.anchor()
                    .ifPresent(anchor -> doubts.add(
                            new CourseDoubt(CourseDoubt.Kind.ANCHOR_UNDATED, true, "/anchors", anchor.code())));
        }
        return date;
    }

    private ZonedDateTime clock(LocalDate day, LocalTime time, ZoneId zone, String pointer) {
        return LocalTimes.exact(day.atTime(time), zone, Optional.empty()).orElseGet(() -> {
            doubts.add(new CourseDoubt(
                    Anchors.kindOf(day.atTime(time), zone), true, pointer, day.atTime(time) + " in " + zone));
            return ZonedDateTime.of(day, time, zone);
        });
    }

    private static CourseDoubt doseAbsent(String medicine, LocalDate day) {
        return new CourseDoubt(CourseDoubt.Kind.DOSE_ABSENT, true, "/doses", medicine + " on " + day);
    }

    private record Amount(Dose amount, Optional<Integer> line) {}

    /** The line with the latest date not after the day counts, wherever it stands in the file. */
    private Optional<Amount> amountOn(Protocol.Row row, String medicine, LocalDate day) {
        List<Plan.DoseLine> lines = plan.doses().getOrDefault(medicine, List.of());
        // The protocol's own amount is meant for its own product.
        Optional<Amount> best = row.amount()
                .filter(fixed -> medicine.equals(row.medicine()))
                .map(fixed -> new Amount(fixed, Optional.empty()));
        Optional<LocalDate> bestFrom = Optional.empty();
        for (int line = 0; line < lines.size(); line++) {
            Optional<LocalDate> from = anchors.date(lines.get(line).from());
            boolean applies = from.isPresent() && !from.get().isAfter(day);
            if (applies && (bestFrom.isEmpty() || from.get().isAfter(bestFrom.get()))) {
                bestFrom = from;
                best = Optional.of(new Amount(lines.get(line).amount(), Optional.of(line)));
            }
        }
        return best;
    }

    private List<DatedVisit> visits() {
        List<DatedVisit> dated = new ArrayList<>();
        for (int index = 0; index < protocol.visits().size(); index++) {
            Protocol.Visit visit = protocol.visits().get(index);
            Optional<LocalDate> date = anchors.date(visit.on());
            if (date.isPresent() && !shifts.isCancelledOn(date.get())) {
                ZonedDateTime at = LocalTimes.exact(
                                date.get().atTime(visit.at()), files.clinic().zone(), Optional.empty())
                        .orElse(ZonedDateTime.of(
                                date.get(), visit.at(), files.clinic().zone()));
                dated.add(new DatedVisit(date.get(), visit.on().toString(), at, visit.what()));
            }
        }
        dated.sort(Comparator.comparing(DatedVisit::at));
        return dated;
    }

    private String dayName(LocalDate day) {
        return anchors.date(Anchor.S1)
                .map(first -> ChronoUnit.DAYS.between(first, day))
                .filter(count -> count >= 0)
                .map(count -> "S" + (count + 1))
                .orElse("");
    }
}

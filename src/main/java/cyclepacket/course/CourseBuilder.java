package cyclepacket.course;

import cyclepacket.plan.Anchor;
import cyclepacket.plan.DayMark;
import cyclepacket.plan.HouseRules;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol;
import cyclepacket.quantity.Refusal;
import java.time.Duration;
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
import java.util.stream.Stream;

/** Dates the rows of one protocol for one plan. */
final class CourseBuilder {
    private final PlanFiles files;
    private final Plan plan;
    private final Protocol protocol;
    private final Anchors anchors;
    private final AmountLookup amounts;
    private final ZoneId home;
    private final Set<CourseDoubt> doubts = new LinkedHashSet<>();
    private final List<DatedDose> doses = new ArrayList<>();
    private final List<WaitingRow> waiting = new ArrayList<>();
    private final List<HeldDose> held = new ArrayList<>();
    private final Shifts shifts;
    private Optional<LocalDate> provisionalFrom = Optional.empty();

    CourseBuilder(PlanFiles files) {
        this.files = files;
        plan = files.plan();
        protocol = files.protocol();
        anchors = Anchors.of(files);
        amounts = new AmountLookup(plan, anchors);
        home = plan.patient().zone();
        shifts = new Shifts(plan.revised());
    }

    Course build() {
        doubts.addAll(anchors.doubts());
        List<DatedVisit> visits = new VisitDates(files, anchors, shifts).visits();
        Optional<DatedVisit> next = visits.stream()
                .filter(visit -> visit.date().isAfter(plan.prepared().on()))
                .findFirst();
        provisionalFrom = next.map(DatedVisit::date);
        for (int row = 0; row < protocol.rows().size(); row++) {
            add(row, protocol.rows().get(row));
        }
        doses.sort(
                Comparator.comparing((DatedDose dose) -> dose.at().toInstant()).thenComparingInt(DatedDose::row));
        return new Course(
                anchors,
                doses,
                visits,
                next,
                List.copyOf(waiting),
                protocol.anchoring().start(),
                List.copyOf(doubts),
                held,
                shifts.cancelledFrom());
    }

    private void add(int index, Protocol.Row row) {
        Optional<Anchor> waitsFor = row.firstDay().anchor().filter(anchors::isWaiting);
        if (waitsFor.isPresent()) {
            waiting.add(new WaitingRow(index, row.medicine(), waitsFor.get()));
        } else if (row.isTrigger()) {
            addTrigger(index, row);
        } else if (row.isExact()) {
            addFromInstant(index, row);
        } else {
            addDaily(index, row);
        }
    }

    private void addTrigger(int index, Protocol.Row row) {
        Duration after = row.pattern().hoursAfter().orElse(Duration.ZERO);
        anchors.trigger().map(first -> first.after(after)).ifPresent(trigger -> {
            LocalDate evening = trigger.evening();
            if (shifts.isCancelledOn(evening)) {
                return;
            }
            String medicine = shifts.product(row.medicine(), evening);
            amount(index, medicine, evening)
                    .ifPresent(found -> doses.add(new DatedDose(
                            evening,
                            "T",
                            medicine,
                            found.amount(),
                            trigger.at(),
                            true,
                            !trigger.isCalled(),
                            index,
                            found.line())));
        });
    }

    /** One dose at an anchor's own instant, or so many hours after it, or one every so many hours from it on. */
    private void addFromInstant(int index, Protocol.Row row) {
        boolean hasInstant = row.firstDay() instanceof DayMark.FromAnchor mark
                && mark.daysAfter() == 0
                && (mark.from().equals(Anchor.T)
                        || protocol.anchoring().toTheMinute().contains(mark.from()));
        if (!hasInstant) {
            doubts.add(new CourseDoubt(
                    CourseDoubt.Kind.EXACT_WITHOUT_TRIGGER,
                    false,
                    "/rows/" + index + "/at",
                    row.firstDay().toString()));
            return;
        }
        Optional<ZonedDateTime> start = anchors.instant(row.firstDay().anchor().orElseThrow());
        Optional<LocalDate> last = dated(row.lastDay());
        if (start.isEmpty() || last.isEmpty() || isTooLong(row, start.get().toLocalDate(), last.get())) {
            return;
        }
        ZonedDateTime at = start.get().plus(row.pattern().hoursAfter().orElse(Duration.ZERO));
        Optional<Duration> step = row.pattern().everyHours();
        do {
            LocalDate day = at.toLocalDate();
            if (isOn(row.medicine(), day, start.get().toLocalDate())) {
                addAt(index, shifts.product(row.medicine(), day), day, at);
            }
            at = at.plus(step.orElse(Duration.ofDays(1)));
        } while (step.isPresent() && !at.toLocalDate().isAfter(last.get()));
    }

    private void addDaily(int index, Protocol.Row row) {
        Optional<LocalDate> first = dated(row.firstDay());
        Optional<LocalDate> last = dated(row.lastDay());
        if (first.isEmpty() || last.isEmpty() || isTooLong(row, first.get(), last.get())) {
            return;
        }
        int step = row.pattern().everyDays();
        LocalDate start = shifts.firstDay(row.medicine(), first.get());
        for (LocalDate day = start; !day.isAfter(last.get()); day = day.plusDays(step)) {
            if (isOn(row.medicine(), day, first.get())) {
                for (String name : row.pattern().times()) {
                    addAtTime(index, day, name);
                }
            }
        }
    }

    /** An anchor in the wrong year would give centuries of evenings. */
    private boolean isTooLong(Protocol.Row row, LocalDate first, LocalDate last) {
        boolean isTooLong = Stream.concat(countedFrom().stream(), Stream.of(first))
                .anyMatch(day -> ChronoUnit.DAYS.between(day, last) > DayMark.FromAnchor.MOST_DAYS);
        if (isTooLong) {
            doubts.add(new CourseDoubt(
                    CourseDoubt.Kind.ROW_TOO_LONG, true, "/anchors", row.medicine() + " until " + last));
        }
        return isTooLong;
    }

    /** The days that evenings are counted from. */
    private List<LocalDate> countedFrom() {
        return Stream.of(Anchor.S1, protocol.anchoring().start())
                .flatMap(anchor -> anchors.date(anchor).stream())
                .toList();
    }

    /** A stop or a start may name either product; both mean this row. */
    private boolean isOn(String own, LocalDate day, LocalDate first) {
        String medicine = shifts.product(own, day);
        return shifts.isOn(own, day, first) && (medicine.equals(own) || shifts.isOn(medicine, day, first));
    }

    private void addAtTime(int index, LocalDate day, String name) {
        Optional<LocalTime> usual = Optional.ofNullable(plan.times().get(name));
        String medicine = shifts.product(protocol.rows().get(index).medicine(), day);
        usual.map(time -> clock(day, shifts.hour(name, day, time), "/times/" + name))
                .filter(at -> !isBeforeAnchor(index, day, at))
                .ifPresent(at -> addAt(index, medicine, day, at));
    }

    /** On the day of an anchor with a minute of its own, nothing that hangs on it comes before that minute. */
    private boolean isBeforeAnchor(int index, LocalDate day, ZonedDateTime at) {
        DayMark first = protocol.rows().get(index).firstDay();
        return first.anchor()
                .filter(anchor -> first.toString().equals(anchor.code()))
                .filter(protocol.anchoring().toTheMinute()::contains)
                .flatMap(anchors::instant)
                .filter(instant -> instant.toLocalDate().equals(day) && at.isBefore(instant))
                .isPresent();
    }

    private void addAt(int index, String medicine, LocalDate day, ZonedDateTime at) {
        boolean provisional =
                provisionalFrom.isPresent() && !day.isBefore(provisionalFrom.get()) && !goesOnUntilTold(index);
        if (shifts.isHeld(medicine, day)) {
            held.add(new HeldDose(day, dayName(day), medicine, at, provisional));
            return;
        }
        amount(index, medicine, day)
                .ifPresent(found -> doses.add(new DatedDose(
                        day, dayName(day), medicine, found.amount(), at, false, provisional, index, found.line())));
    }

    /** What has a stop rule is never left off because a call is late: it goes on until the patient is told to stop. */
    private boolean goesOnUntilTold(int index) {
        return protocol.rows().get(index).pattern().stopRule().isPresent();
    }

    private Optional<AmountLookup.Amount> amount(int index, String medicine, LocalDate day) {
        try {
            Optional<AmountLookup.Amount> found = amounts.on(protocol.rows().get(index), medicine, day);
            if (found.isEmpty()) {
                doubts.add(new CourseDoubt(CourseDoubt.Kind.DOSE_ABSENT, true, "/doses", medicine + " on " + day));
            }
            return found;
        } catch (Refusal inexact) {
            doubts.add(
                    new CourseDoubt(CourseDoubt.Kind.HALF_INEXACT, false, "/rows/" + index + "/half-from", medicine));
            return Optional.empty();
        }
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

    private ZonedDateTime clock(LocalDate day, LocalTime time, String pointer) {
        return LocalTimes.exact(day.atTime(time), home, Optional.empty()).orElseGet(() -> {
            doubts.add(new CourseDoubt(
                    Anchors.kindOf(day.atTime(time), home), true, pointer, day.atTime(time) + " in " + home));
            return ZonedDateTime.of(day, time, home);
        });
    }

    /** Counted from S1 where the day is not before it, else from the anchor that starts the course. */
    private boolean isCountedFromZero() {
        return files.clinic().rules().firstStimulationDay() == HouseRules.FirstStimulationDay.S0;
    }

    private String dayName(LocalDate day) {
        for (Anchor anchor : List.of(Anchor.S1, protocol.anchoring().start())) {
            Optional<Long> count = anchors.date(anchor)
                    .map(first -> ChronoUnit.DAYS.between(first, day))
                    .filter(days -> days >= 0);
            if (count.isPresent()) {
                return anchor.equals(Anchor.S1) && isCountedFromZero()
                        ? "S" + count.get()
                        : new DayMark.FromAnchor(anchor, Math.toIntExact(count.get())).toString();
            }
        }
        return "";
    }
}

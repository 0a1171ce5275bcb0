package cyclepacket.course;

import cyclepacket.plan.Anchor;
import cyclepacket.plan.Clinic;
import cyclepacket.plan.DayMark;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every anchor of one plan on its date, and the two that have an hour on their instant. */
public final class Anchors {
    private final Plan plan;
    private final Protocol protocol;
    private final List<CourseDoubt> doubts = new ArrayList<>();
    private final Clinic clinic;
    private final Map<Anchor, ZonedDateTime> instants = new LinkedHashMap<>();
    private final Optional<ZonedDateTime> retrieval;
    private final Optional<ZonedDateTime> calledTrigger;
    private final Optional<Trigger> trigger;

    private Anchors(PlanFiles files) {
        plan = files.plan();
        protocol = files.protocol();
        clinic = files.clinic();
        ZoneId home = plan.patient().zone();
        Optional<ZonedDateTime> planned =
                instant(Optional.ofNullable(plan.anchors().get(Anchor.R)), clinic.zone(), "/anchors/R", "R");
        planned.ifPresent(at -> instants.put(Anchor.R, at));
        // A cycle that was cancelled has nothing left that an hour could be wrong for.
        Shifts shifts = new Shifts(plan.revised());
        retrieval = planned.filter(at -> !shifts.isCancelledOn(at.toLocalDate()));
        for (Anchor anchor : protocol.anchoring().toTheMinute()) {
            instant(Optional.ofNullable(plan.anchors().get(anchor)), home, "/anchors/" + anchor, anchor.code())
                    .ifPresent(at -> instants.put(anchor, at));
        }
        int call = lastCall(Anchor.T);
        calledTrigger = call < 0
                ? Optional.empty()
                : instant(Optional.of(plan.called().get(call).at()), home, "/called/" + call + "/at", "T")
                        .filter(at -> !shifts.isCancelledOn(new Trigger(at, true).evening()));
        trigger = planned(home)
                .or(() -> calledTrigger)
                .map(at -> new Trigger(at, call >= 0 && plan.called().get(call).readBack()))
                .filter(own -> !shifts.isCancelledOn(own.evening()));
    }

    static Anchors of(PlanFiles files) {
        return new Anchors(files);
    }

    private Optional<ZonedDateTime> planned(ZoneId home) {
        for (Map.Entry<Anchor, Duration> before : protocol.triggerBefore().entrySet()) {
            Optional<ZonedDateTime> later = Optional.ofNullable(instants.get(before.getKey()));
            if (later.isPresent()) {
                return later.map(at -> at.minus(before.getValue()).withZoneSameInstant(home));
            }
        }
        return instant(Optional.ofNullable(plan.anchors().get(Anchor.T)), home, "/anchors/T", "T");
    }

    private Optional<ZonedDateTime> instant(Optional<Plan.Moment> moment, ZoneId zone, String pointer, String name) {
        if (moment.isEmpty()) {
            return Optional.empty();
        }
        Optional<LocalDateTime> local = moment.get().local();
        if (local.isEmpty()) {
            doubts.add(new CourseDoubt(CourseDoubt.Kind.HOUR_ABSENT, true, pointer, name));
            return Optional.empty();
        }
        Optional<ZonedDateTime> exact =
                LocalTimes.exact(local.get(), zone, moment.get().offset());
        if (exact.isEmpty()) {
            doubts.add(new CourseDoubt(kindOf(local.get(), zone), true, pointer, local.get() + " in " + zone));
        }
        return exact;
    }

    static CourseDoubt.Kind kindOf(LocalDateTime local, ZoneId zone) {
        return switch (LocalTimes.shown(local, zone)) {
            case NEVER -> CourseDoubt.Kind.TIME_REMOVED;
            case TWICE -> CourseDoubt.Kind.TIME_REPEATED;
            case ONCE -> CourseDoubt.Kind.OFFSET_WRONG;
        };
    }

    /** The place in {@code called} of the call that holds for this anchor, the last one; -1 without one. */
    public int lastCall(Anchor anchor) {
        for (int line = plan.called().size() - 1; line >= 0; line--) {
            if (plan.called().get(line).anchor().equals(anchor)) {
                return line;
            }
        }
        return -1;
    }

    /** Whether the anchor was told to the patient and read back. */
    public boolean isCalled(Anchor anchor) {
        int line = lastCall(anchor);
        return line >= 0 && plan.called().get(line).readBack();
    }

    /** Retrieval, in the clinic's zone; none once the cycle is cancelled before it. */
    public Optional<ZonedDateTime> retrieval() {
        return retrieval;
    }

    /** The trigger: from the retrieval and its hours where both are known, else as it was called or planned; none once it is cancelled. */
    public Optional<Trigger> trigger() {
        return trigger;
    }

    /** The trigger time exactly as it was told on the phone, in the patient's zone. */
    public Optional<ZonedDateTime> calledTrigger() {
        return calledTrigger;
    }

    /** The anchor's instant, where it has one: T, R and those that the protocol counts to the minute. */
    public Optional<ZonedDateTime> instant(Anchor anchor) {
        return anchor.equals(Anchor.T) ? trigger.map(Trigger::at) : Optional.ofNullable(instants.get(anchor));
    }

    /** Whether the anchor is told on the phone, and was not yet told and read back. */
    public boolean isWaiting(Anchor anchor) {
        return protocol.anchoring().byPhone().contains(anchor) && !isCalled(anchor);
    }

    /** The anchor's own date; T has the date of its evening; one that waits for a call has none. */
    public Optional<LocalDate> date(Anchor anchor) {
        if (anchor.equals(Anchor.T)) {
            return trigger.map(Trigger::evening);
        }
        if (isWaiting(anchor)) {
            return Optional.empty();
        }
        Optional<Plan.Moment> written = Optional.ofNullable(plan.anchors().get(anchor));
        if (written.isEmpty() && protocol.anchoring().byPhone().contains(anchor)) {
            return Optional.of(plan.called().get(lastCall(anchor)).at().date());
        }
        return written.map(moment -> counted(anchor, moment));
    }

    /** Cycle day 1 begins on the day after a full flow that begins at the clinic's cut-off hour or later. */
    private LocalDate counted(Anchor anchor, Plan.Moment moment) {
        boolean isLate = anchor.equals(Anchor.CD1)
                && moment.time()
                        .filter(time -> !time.isBefore(clinic.rules().cycleDayOneCutOff()))
                        .isPresent();
        return isLate ? moment.date().plusDays(1) : moment.date();
    }

    /** The date that a mark names, if its anchor has one. */
    public Optional<LocalDate> date(DayMark mark) {
        if (mark instanceof DayMark.FromAnchor counted) {
            return date(counted.from()).map(day -> day.plusDays(counted.daysAfter()));
        }
        return Optional.of(((DayMark.Dated) mark).date());
    }

    /**
     * The date a mark names at the latest: an unknown T is one day after the most stimulation days. What hangs on an
     * anchor that waits for a call is looked at no further than the day before the latest one it can have.
     */
    public Optional<LocalDate> latestDate(DayMark mark) {
        if (mark instanceof DayMark.FromAnchor counted) {
            if (counted.from().equals(Anchor.T) && trigger.isEmpty()) {
                return isWaiting(Anchor.S1) ? dayBeforeLatest(Anchor.S1, 0) : latestTrigger(counted.daysAfter());
            }
            if (isWaiting(counted.from())) {
                return dayBeforeLatest(counted.from(), counted.daysAfter());
            }
        }
        return date(mark);
    }

    private Optional<LocalDate> latestTrigger(int daysAfter) {
        return date(Anchor.S1)
                .flatMap(first ->
                        protocol.stimulationDays().map(days -> first.plusDays(days.most() + (long) daysAfter)));
    }

    private Optional<LocalDate> dayBeforeLatest(Anchor anchor, int daysAfter) {
        return Optional.ofNullable(protocol.anchoring().atLatest().get(anchor))
                .flatMap(this::date)
                .map(latest -> latest.plusDays(Math.min(-1, daysAfter)));
    }

    List<CourseDoubt> doubts() {
        return List.copyOf(doubts);
    }
}

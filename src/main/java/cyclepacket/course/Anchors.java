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
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every anchor of one plan on its date, and the two that have an hour on their instant. */
public final class Anchors {
    private final Plan plan;
    private final Protocol protocol;
    private final List<CourseDoubt> doubts = new ArrayList<>();
    private final Optional<ZonedDateTime> retrieval;
    private final Optional<ZonedDateTime> calledTrigger;
    private final Optional<Trigger> trigger;

    private Anchors(PlanFiles files) {
        plan = files.plan();
        protocol = files.protocol();
        Clinic clinic = files.clinic();
        ZoneId home = plan.patient().zone();
        retrieval = instant(Optional.ofNullable(plan.anchors().get(Anchor.R)), clinic.zone(), "/anchors/R", "R");
        int call = lastCall(Anchor.T);
        calledTrigger = call < 0
                ? Optional.empty()
                : instant(Optional.of(plan.called().get(call).at()), home, "/called/" + call + "/at", "T");
        trigger = planned(home)
                .or(() -> calledTrigger)
                .map(at -> new Trigger(at, call >= 0 && plan.called().get(call).readBack()));
    }

    static Anchors of(PlanFiles files) {
        return new Anchors(files);
    }

    private Optional<ZonedDateTime> planned(ZoneId home) {
        for (Map.Entry<Anchor, Duration> before : protocol.triggerBefore().entrySet()) {
            if (before.getKey().equals(Anchor.R) && retrieval.isPresent()) {
                return retrieval.map(at -> at.minus(before.getValue()).withZoneSameInstant(home));
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

    /** Retrieval, in the clinic's zone. */
    public Optional<ZonedDateTime> retrieval() {
        return retrieval;
    }

    /** The trigger: from the retrieval and its hours where both are known, else as it was called or planned. */
    public Optional<Trigger> trigger() {
        return trigger;
    }

    /** The trigger time exactly as it was told on the phone, in the patient's zone. */
    public Optional<ZonedDateTime> calledTrigger() {
        return calledTrigger;
    }

    /** The anchor's own date; T has the date of its evening. */
    public Optional<LocalDate> date(Anchor anchor) {
        if (anchor.equals(Anchor.T)) {
            return trigger.map(Trigger::evening);
        }
        return Optional.ofNullable(plan.anchors().get(anchor)).map(Plan.Moment::date);
    }

    /** The date that a mark names, if its anchor has one. */
    public Optional<LocalDate> date(DayMark mark) {
        if (mark instanceof DayMark.FromAnchor counted) {
            return date(counted.from()).map(day -> day.plusDays(counted.daysAfter()));
        }
        return Optional.of(((DayMark.Dated) mark).date());
    }

    /** The date a mark names at the latest: an unknown T is one day after the most stimulation days. */
    public Optional<LocalDate> latestDate(DayMark mark) {
        if (mark instanceof DayMark.FromAnchor counted && counted.from().equals(Anchor.T) && trigger.isEmpty()) {
            return date(Anchor.S1)
                    .map(first -> first.plusDays(protocol.stimulationDays().most() + (long) counted.daysAfter()));
        }
        return date(mark);
    }

    List<CourseDoubt> doubts() {
        return List.copyOf(doubts);
    }
}

package cyclepacket.course;

import cyclepacket.plan.Anchor;
import cyclepacket.plan.PlanFiles;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The dated doses that a protocol and a plan give.
 *
 * @param doses of every medicine, in the order they are due; doses due together keep the order of the protocol
 * @param nextVisit the first visit on a date later than the day the issue was prepared
 * @param doubts what could not be dated
 * @param held evenings on which a medicine is held back
 * @param cancelledFrom the first day without any injection, when the cycle was cancelled
 */
public record Course(
        Anchors anchors,
        List<DatedDose> doses,
        List<DatedVisit> visits,
        Optional<DatedVisit> nextVisit,
        List<CourseDoubt> doubts,
        List<HeldDose> held,
        Optional<LocalDate> cancelledFrom) {
    public Course {
        Objects.requireNonNull(anchors, "anchors");
        doses = List.copyOf(doses);
        visits = List.copyOf(visits);
        Objects.requireNonNull(nextVisit, "nextVisit");
        doubts = List.copyOf(doubts);
        held = List.copyOf(held);
        Objects.requireNonNull(cancelledFrom, "cancelledFrom");
    }

    public static Course of(PlanFiles files) {
        return new CourseBuilder(files).build();
    }

    public List<DatedDose> dosesOf(String medicine) {
        return doses.stream().filter(dose -> dose.medicine().equals(medicine)).toList();
    }

    public List<HeldDose> heldOf(String medicine) {
        return held.stream().filter(dose -> dose.medicine().equals(medicine)).toList();
    }

    /** Whether the start was told to the patient; until then nothing in the packet is an instruction. */
    public boolean isStartCalled() {
        return anchors.isCalled(Anchor.S1);
    }

    public boolean isTriggerCalled() {
        return anchors.trigger().map(Trigger::isCalled).orElse(false);
    }

    /** From this evening on, that evening included, a call decides; empty when no visit is to come. */
    public Optional<LocalDate> provisionalFrom() {
        return nextVisit.map(DatedVisit::date);
    }

    public Optional<LocalDate> firstDay() {
        return doses.stream().map(DatedDose::date).min(LocalDate::compareTo);
    }

    public Optional<LocalDate> lastDay() {
        return doses.stream().map(DatedDose::date).max(LocalDate::compareTo);
    }
}

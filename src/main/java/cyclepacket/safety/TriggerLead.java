package cyclepacket.safety;

import cyclepacket.course.Anchors;
import cyclepacket.course.LocalTimes;
import cyclepacket.course.Trigger;
import cyclepacket.finding.Place;
import cyclepacket.plan.Anchor;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * Elapsed minutes from the trigger, as called or else as planned, to the retrieval.
 *
 * @param place where the time or the hours are written
 */
record TriggerLead(long minutes, Place place) {

    static Optional<TriggerLead> of(ComputedPlan plan) {
        Anchors anchors = plan.course().anchors();
        Optional<ZonedDateTime> told = anchors.calledTrigger();
        Optional<ZonedDateTime> trigger = told.or(() -> anchors.trigger().map(Trigger::at));
        if (trigger.isEmpty() || anchors.retrieval().isEmpty()) {
            return Optional.empty();
        }
        long minutes =
                LocalTimes.elapsedMinutes(trigger.get(), anchors.retrieval().get());
        Place place = told.isPresent()
                ? plan.inPlan("/called/" + anchors.lastCall(Anchor.T) + "/at")
                : plan.inProtocol("/anchors/T/hours-before/R");
        return Optional.of(new TriggerLead(minutes, place));
    }

    boolean isOutside(Duration least, Duration most) {
        return minutes < least.toMinutes() || minutes > most.toMinutes();
    }

    /** The two limits as words. */
    static String words(Duration least, Duration most) {
        return Phrases.hours(least.toMinutes()) + " to " + Phrases.hours(most.toMinutes());
    }
}

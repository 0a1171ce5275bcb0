package cyclepacket.exchange;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.parameter.Related;
import biweekly.property.Status;
import biweekly.property.Trigger;
import biweekly.util.Duration;
import cyclepacket.course.Course;
import cyclepacket.course.DatedDose;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.ledger.Evening;
import cyclepacket.plan.Plan;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Date;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;

/**
 * Reminders for the patient's phone (iCalendar, RFC 5545): one event an evening with an alarm. It says neither amount nor
 * medicine, because old alarms outlive an issue; evenings that wait for a call have none.
 */
public final class CalendarFile {
    private static final String PRODUCT = "-//Cyclepacket//Reminders//EN";
    private static final Duration LASTS = Duration.builder().minutes(15).build();
    private static final Duration AT_ONCE = Duration.builder().minutes(0).build();

    private CalendarFile() {}

    /** One issue: its plan and what was computed from it. */
    public record Issue(Plan plan, Course course, CycleLedger ledger) {}

    /**
     * The calendar of an issue; events of the replaced issue that it no longer has are sent as cancelled.
     *
     * @param code the issue code, which every event names
     * @return empty when there is nothing to remind of and nothing to cancel
     */
    public static Optional<byte[]> of(Issue now, Optional<Issue> replaced, String code) {
        LocalDate today = now.plan().prepared().on();
        Map<String, Instant> events = events(now, today);
        Map<String, Instant> gone =
                replaced.map(before -> events(before, today)).orElse(Map.of());
        ICalendar calendar = new ICalendar();
        calendar.setProductId(PRODUCT);
        events.forEach((key, at) -> calendar.addEvent(event(now, key, at, code, Status.confirmed())));
        gone.forEach((key, at) -> {
            if (!events.containsKey(key)) {
                calendar.addEvent(event(now, key, at, code, Status.cancelled()));
            }
        });
        return calendar.getEvents().isEmpty()
                ? Optional.empty()
                : Optional.of(Biweekly.write(calendar).go().getBytes(StandardCharsets.UTF_8));
    }

    /** Instructions alone: called, not provisional, from today on. The key of the trigger stays when its time moves. */
    private static Map<String, Instant> events(Issue issue, LocalDate today) {
        Map<String, Instant> events = new TreeMap<>();
        if (!issue.course().isStartCalled()) {
            return events;
        }
        issue.ledger().medicines().stream()
                .flatMap(medicine -> medicine.days().stream())
                .map(day -> day.evening())
                .filter(evening -> evening.state() == Evening.State.PLANNED && !evening.isHeld())
                .filter(evening -> !evening.date().isBefore(today))
                .forEach(evening -> evening.at()
                        .filter(at -> !isExact(issue, at))
                        .ifPresent(at -> events.merge(evening.date().toString(), at.toInstant(), CalendarFile::first)));
        if (issue.course().isTriggerCalled()) {
            issue.course().doses().stream()
                    .filter(DatedDose::isExact)
                    .filter(dose -> !dose.date().isBefore(today))
                    .forEach(dose -> events.put("exact", dose.at().toInstant()));
        }
        return events;
    }

    private static boolean isExact(Issue issue, ZonedDateTime at) {
        return issue.course().doses().stream()
                .anyMatch(dose -> dose.isExact() && dose.at().equals(at));
    }

    private static Instant first(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }

    private static VEvent event(Issue issue, String key, Instant at, String code, Status status) {
        String text = "evening: see your page, code " + code;
        VEvent event = new VEvent();
        // The same evening keeps its name in every issue; the name says nothing about the person.
        event.setUid(UUID.nameUUIDFromBytes((issue.plan().id() + " " + key).getBytes(StandardCharsets.UTF_8))
                .toString());
        event.setSequence(issue.plan().issue());
        event.setDateTimeStamp(Date.from(
                issue.plan().prepared().on().atStartOfDay(ZoneOffset.UTC).toInstant()));
        event.setDateStart(Date.from(at));
        event.setDuration(LASTS);
        event.setSummary(text);
        event.setStatus(status);
        if (!status.isCancelled()) {
            event.addAlarm(VAlarm.display(new Trigger(AT_ONCE, Related.START), text));
        }
        return event;
    }
}

package cyclepacket.page;

import cyclepacket.course.Trigger;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sentences that keep an exact time from being taken for another: the night it lies in, and the clinic's clock. */
final class InstantNotes {
    /** From this hour on a time is near midnight, and both days are named. */
    private static final LocalTime LATE = LocalTime.of(22, 0);

    private final PacketFacts facts;
    private final Words words;

    InstantNotes(PacketFacts facts, Words words) {
        this.facts = facts;
        this.words = words;
    }

    /** Between which two days a time near midnight falls; says nothing of the clinic. */
    List<String> night(ZonedDateTime at) {
        return between(at).stream().toList();
    }

    /** @param at in the patient's zone */
    List<String> of(ZonedDateTime at) {
        List<String> notes = new ArrayList<>(night(at));
        ZonedDateTime clinic = at.withZoneSameInstant(facts.files().clinic().zone());
        if (!clinic.toLocalDateTime().equals(at.toLocalDateTime())) {
            notes.add(words.fill(
                    "instant.clinic",
                    Map.of(
                            "day", words.clock().day(clinic.toLocalDate()).full(),
                            "time", words.clock().time(clinic.toLocalTime()),
                            "zone", words.clock().zone(clinic.getZone()))));
        }
        return notes;
    }

    private Optional<String> between(ZonedDateTime at) {
        LocalTime time = at.toLocalTime();
        boolean early = time.isBefore(Trigger.NIGHT_ENDS);
        if (!early && time.isBefore(LATE)) {
            return Optional.empty();
        }
        LocalDate before = early ? at.toLocalDate().minusDays(1) : at.toLocalDate();
        return Optional.of(words.fill(
                time.equals(LocalTime.MIDNIGHT) ? "instant.midnight" : "instant.night",
                Map.of(
                        "before", words.clock().day(before).full(),
                        "after", words.clock().day(before.plusDays(1)).full())));
    }
}

package cyclepacket.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.PlanSketch;
import cyclepacket.course.Course;
import cyclepacket.course.Trigger;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Trigger instants across clock changes. Source: RFC 5545, section 3.3.6 (days are nominal, hours are exact); the zone
 * rules are the IANA time zone data, for which java.time is the reference library. The instants were worked by hand.
 */
class TriggerInstantsTest {
    private static Trigger trigger(String retrieval, String clinicZone, String patientZone) {
        PlanSketch sketch =
                new PlanSketch().size("900", "900", "900").home("900").dose(1, "25");
        sketch.start = LocalDateTime.parse(retrieval).toLocalDate().minusDays(10);
        sketch.doses.clear();
        sketch.dose(1, "25");
        sketch.clinicZone = ZoneId.of(clinicZone);
        sketch.patientZone = ZoneId.of(patientZone);
        sketch.retrieval = Optional.of(LocalDateTime.parse(retrieval));
        return Course.of(sketch.files()).anchors().trigger().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-09T08:30, 2026-03-07T19:30",
        "2026-11-02T09:00, 2026-10-31T22:00",
        "2026-06-10T09:00, 2026-06-08T21:00",
        "2026-11-01T08:30, 2026-10-30T21:30",
        "2027-03-14T08:30, 2027-03-12T19:30"
    })
    void countsElapsedHoursBackInNewYork(String retrieval, String trigger) {
        assertEquals(
                LocalDateTime.parse(trigger),
                trigger(retrieval, "America/New_York", "America/New_York").at().toLocalDateTime());
    }

    @Test
    void fallsOnTheMidnightBetweenTwoDaysInThePatientsZone() {
        Trigger trigger = trigger("2026-10-12T09:00", "America/Los_Angeles", "America/New_York");
        assertEquals(LocalDateTime.parse("2026-10-11T00:00"), trigger.at().toLocalDateTime());
        assertTrue(trigger.isAfterMidnight());
        assertEquals(LocalDate.of(2026, 10, 10), trigger.evening());
    }

    @ParameterizedTest
    @CsvSource({"2026-06-10T17:59, 2026-06-08", "2026-06-10T18:00, 2026-06-09"})
    void countsTheNightBeforeSixAsTheEveningBefore(String retrieval, String evening) {
        assertEquals(
                LocalDate.parse(evening),
                trigger(retrieval, "America/New_York", "America/New_York").evening());
    }
}

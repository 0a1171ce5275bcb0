package cyclepacket.course;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cyclepacket.course.LocalTimes.Shown;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Clock changes in New York: forward on 14 March 2027 at 02:00, back on 1 November 2026 at 02:00. Source: IANA time zone
 * data; hours are elapsed and days nominal by RFC 5545, section 3.3.6.
 */
class LocalTimesTest {
    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");

    private static Optional<String> exact(String local, String offset) {
        Optional<ZoneOffset> written =
                Optional.of(offset).filter(text -> !text.equals("none")).map(ZoneOffset::of);
        return LocalTimes.exact(LocalDateTime.parse(local), NEW_YORK, written)
                .map(at -> at.toOffsetDateTime().toString());
    }

    @ParameterizedTest
    @CsvSource({
        "2027-03-14T01:59, ONCE",
        "2027-03-14T02:00, NEVER",
        "2027-03-14T02:59, NEVER",
        "2027-03-14T03:00, ONCE",
        "2026-11-01T00:59, ONCE",
        "2026-11-01T01:00, TWICE",
        "2026-11-01T01:59, TWICE",
        "2026-11-01T02:00, ONCE"
    })
    void knowsHowOftenAClockShowsATime(String local, Shown shown) {
        assertEquals(shown, LocalTimes.shown(LocalDateTime.parse(local), NEW_YORK));
    }

    @Test
    void takesNoTimeThatIsSkippedOrRepeated() {
        assertEquals(Optional.empty(), exact("2027-03-14T02:30", "none"));
        assertEquals(Optional.empty(), exact("2027-03-14T02:30", "-05:00"));
        assertEquals(Optional.empty(), exact("2026-11-01T01:30", "none"));
        assertEquals(Optional.of("2026-10-31T20:30-04:00"), exact("2026-10-31T20:30", "none"));
    }

    @Test
    void letsTheWrittenOffsetDecide() {
        assertEquals(Optional.of("2026-11-01T01:30-04:00"), exact("2026-11-01T01:30", "-04:00"));
        assertEquals(Optional.of("2026-11-01T01:30-05:00"), exact("2026-11-01T01:30", "-05:00"));
        assertEquals(Optional.empty(), exact("2026-11-01T01:30", "+01:00"));
        assertEquals(Optional.empty(), exact("2026-10-31T20:30", "-05:00"));
    }

    /** Friday 21:30 to Sunday 08:30 over the change back is 35 hours on the wall and 36 elapsed. */
    @Test
    void countsElapsedMinutes() {
        ZonedDateTime trigger = ZonedDateTime.of(2026, 10, 30, 21, 30, 0, 0, NEW_YORK);
        ZonedDateTime retrieval = ZonedDateTime.of(2026, 11, 1, 8, 30, 0, 0, NEW_YORK);
        assertEquals(36 * 60, LocalTimes.elapsedMinutes(trigger, retrieval));
    }
}

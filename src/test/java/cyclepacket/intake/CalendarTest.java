package cyclepacket.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cyclepacket.plan.Plan.Moment;
import cyclepacket.quantity.Refusal;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CalendarTest {
    @Test
    void readsDatesThatExist() {
        assertEquals(LocalDate.of(2028, 2, 29), Calendar.date("2028-02-29"));
        assertEquals(LocalDate.of(1900, 1, 1), Calendar.date("1900-01-01"));
        assertEquals(LocalDate.of(2199, 12, 31), Calendar.date("2199-12-31"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2027-02-29",
                "2027-13-01",
                "2027-3-9",
                "03/09/2027",
                "20270309",
                "2027-03-09 ",
                "1899-12-31",
                "2200-01-01",
                "+12027-03-09",
                "",
                "tomorrow",
                "٢٠٢٧-٠٣-٠٩"
            })
    void refusesOtherDates(String text) {
        assertThrows(Refusal.class, () -> Calendar.date(text));
    }

    @Test
    void readsClockTimes() {
        assertEquals(LocalTime.of(0, 0), Calendar.time("00:00"));
        assertEquals(LocalTime.of(23, 59), Calendar.time("23:59"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"24:00", "8:30", "08:60", "20.30", "20:30:00", "8:30 pm", ""})
    void refusesOtherClockTimes(String text) {
        assertThrows(Refusal.class, () -> Calendar.time(text));
    }

    @Test
    void readsMomentsWithAsMuchAsIsWritten() {
        LocalDate day = LocalDate.of(2027, 3, 15);
        assertEquals(new Moment(day, Optional.empty(), Optional.empty()), Calendar.moment("2027-03-15"));
        Optional<LocalTime> time = Optional.of(LocalTime.of(8, 30));
        assertEquals(new Moment(day, time, Optional.empty()), Calendar.moment("2027-03-15T08:30"));
        assertEquals(
                new Moment(day, time, Optional.of(ZoneOffset.ofHours(-4))), Calendar.moment("2027-03-15T08:30-04:00"));
        assertEquals(new Moment(day, time, Optional.of(ZoneOffset.UTC)), Calendar.moment("2027-03-15T08:30Z"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2027-03-15T",
                "2027-03-15 08:30",
                "2027-03-15T8:30",
                "2027-03-15T08:30-4",
                "T08:30",
                "2027-03-15T08:30-19:00"
            })
    void refusesOtherMoments(String text) {
        assertThrows(Refusal.class, () -> Calendar.moment(text));
    }

    @Test
    void takesZonesOfPlacesOnly() {
        assertEquals(ZoneId.of("America/New_York"), Calendar.zone("America/New_York"));
        for (String other :
                new String[] {"EST", "UTC", "GMT", "Z", "UTC-05:00", "-05:00", "Etc/GMT+5", "America/Nowhere", ""}) {
            assertThrows(Refusal.class, () -> Calendar.zone(other), other);
        }
        Refusal near = assertThrows(Refusal.class, () -> Calendar.zone("america/new york"));
        assertEquals("did you mean America/New_York?", near.mend());
    }

    @Test
    void readsHoursThatAreWholeMinutes() {
        assertEquals(Duration.ofMinutes(2070), Calendar.hours(new BigDecimal("34.5")));
        assertEquals(Duration.ofMinutes(3), Calendar.hours(new BigDecimal("0.05")));
        assertThrows(Refusal.class, () -> Calendar.hours(new BigDecimal("36.01")));
    }
}

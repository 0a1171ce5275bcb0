package cyclepacket.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.plan.Pharmacy;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Last order times worked by hand; common practice, no published source. */
class PharmacyDaysTest {
    private static final LocalTime EVENING = LocalTime.of(20, 30);

    private static ZonedDateTime lastOrder(String needed, int authorisation, Set<LocalDate> closed, String sameDay) {
        Pharmacy pharmacy = new Pharmacy(
                "the pharmacy",
                LocalTime.of(14, 0),
                Set.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY),
                1,
                authorisation,
                closed,
                Optional.ofNullable(sameDay).map(LocalTime::parse));
        return new PharmacyDays(pharmacy, ZoneId.of("America/New_York"))
                .lastOrder(LocalDate.parse(needed), EVENING)
                .orElseThrow();
    }

    /** Parcels leave from Monday to Thursday: none from Friday 12 March to Sunday, one on the Monday after. */
    @Test
    void knowsWhetherAParcelLeavesInTime() {
        PharmacyDays days = new PharmacyDays(
                new Pharmacy(
                        "the pharmacy",
                        LocalTime.of(14, 0),
                        Set.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY),
                        1,
                        0,
                        Set.of(),
                        Optional.empty()),
                ZoneId.of("America/New_York"));
        assertFalse(days.shipsWithin(LocalDate.of(2027, 3, 12), 3));
        assertTrue(days.shipsWithin(LocalDate.of(2027, 3, 12), 4));
    }

    @Test
    void countsBackOverAWeekend() {
        assertEquals("2026-11-19T14:00", text(lastOrder("2026-11-23", 0, Set.of(), null)));
        assertEquals("2027-03-11T14:00", text(lastOrder("2027-03-13", 0, Set.of(), null)));
    }

    @Test
    void countsBackOverAHoliday() {
        Set<LocalDate> holiday = Set.of(LocalDate.of(2026, 11, 26));
        assertEquals("2026-11-24T14:00", text(lastOrder("2026-11-26", 0, holiday, null)));
    }

    @Test
    void takesAuthorisationOffBeforeTheOrder() {
        assertEquals("2026-11-17T14:00", text(lastOrder("2026-11-23", 2, Set.of(), null)));
    }

    @Test
    void trustsAParcelOfTheSameDayOnlyWhereTheClinicDoes() {
        assertEquals("2026-11-18T14:00", text(lastOrder("2026-11-20", 0, Set.of(), null)));
        assertEquals("2026-11-19T14:00", text(lastOrder("2026-11-20", 0, Set.of(), "17:00")));
        assertEquals("2026-11-18T14:00", text(lastOrder("2026-11-20", 0, Set.of(), "21:00")));
    }

    private static String text(ZonedDateTime at) {
        return at.toLocalDateTime().toString();
    }
}

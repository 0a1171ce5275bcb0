package cyclepacket.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The last hour to order against a walk over the calendar: every half hour is tried, until the parcel comes in time. */
class LastOrderLaws {
    private static final int CASES = Integer.getInteger("cyclepacket.cases", 200);

    @Test
    void agreesWithAWalkOverTheCalendar() {
        int onTheDay = 0;
        int found = 0;
        for (int number = 0; number < CASES; number++) {
            long seed = 4_417L + number;
            CalendarWalk walk = CalendarWalk.random(new Random(seed));
            Optional<LocalDateTime> computed = new PharmacyDays(walk.pharmacy(), ZoneId.of("America/New_York"))
                    .lastOrder(walk.needed(), walk.injectionAt())
                    .map(ZonedDateTime::toLocalDateTime);
            assertEquals(walk.lastOrder(), computed, "seed " + seed + ": " + walk);
            onTheDay += walk.mayArriveOn(walk.needed()) ? 1 : 0;
            found += computed.isPresent() ? 1 : 0;
        }
        assertTrue(onTheDay > CASES / 20 && found > CASES / 2, "the cases are too easy: " + onTheDay + ", " + found);
    }
}

package cyclepacket.supply;

import cyclepacket.plan.Pharmacy;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Objects;
import java.util.Optional;

/** The pharmacy's calendar: when it works, when it ships, and the last hour at which an order still comes in time. */
public record PharmacyDays(Pharmacy pharmacy, ZoneId zone) {
    /** How far back an order can lie: beyond this the pharmacy's rules themselves cannot be met. */
    private static final int FARTHEST_DAYS = 400;

    public PharmacyDays {
        Objects.requireNonNull(pharmacy, "pharmacy");
        Objects.requireNonNull(zone, "zone");
    }

    public boolean isWorkingDay(LocalDate day) {
        DayOfWeek weekday = day.getDayOfWeek();
        return weekday != DayOfWeek.SATURDAY
                && weekday != DayOfWeek.SUNDAY
                && !pharmacy.closed().contains(day);
    }

    private boolean ships(LocalDate day) {
        return pharmacy.ships().contains(day.getDayOfWeek())
                && !pharmacy.closed().contains(day);
    }

    /** The day a parcel arrives that leaves on {@code shipped}. */
    LocalDate arrival(LocalDate shipped) {
        LocalDate day = shipped;
        for (int left = pharmacy.arrivesAfterWorkingDays(); left > 0; left--) {
            day = nextWorkingDay(day);
        }
        return day;
    }

    private LocalDate nextWorkingDay(LocalDate day) {
        LocalDate next = day.plusDays(1);
        for (int tries = 0; !isWorkingDay(next) && tries < FARTHEST_DAYS; tries++) {
            next = next.plusDays(1);
        }
        return next;
    }

    private LocalDate workingDayBefore(LocalDate day) {
        LocalDate before = day.minusDays(1);
        for (int tries = 0; !isWorkingDay(before) && tries < FARTHEST_DAYS; tries++) {
            before = before.minusDays(1);
        }
        return before;
    }

    /**
     * The last hour to order, so that the parcel is there on the working day before {@code needed} at the latest; on
     * that day itself only where the clinic counts on it from an hour not later than the injection's.
     *
     * @param needed the first evening that may be short
     * @param injectionAt the hour of that injection
     * @return clinic time; empty when no shipping day in the year before would do
     */
    public Optional<ZonedDateTime> lastOrder(LocalDate needed, LocalTime injectionAt) {
        boolean sameDay = isWorkingDay(needed)
                && pharmacy.sameDayArrivalFrom()
                        .filter(from -> !injectionAt.isBefore(from))
                        .isPresent();
        LocalDate deadline = sameDay ? needed : workingDayBefore(needed);
        LocalDate ship = deadline;
        for (int tries = 0; tries < FARTHEST_DAYS; tries++, ship = ship.minusDays(1)) {
            if (ships(ship) && !arrival(ship).isAfter(deadline)) {
                return Optional.of(
                        beforeAuthorisation(ship).atTime(pharmacy.orderBy()).atZone(zone));
            }
        }
        return Optional.empty();
    }

    private LocalDate beforeAuthorisation(LocalDate ship) {
        LocalDate day = ship;
        for (int left = pharmacy.authorisationWorkingDays(); left > 0; left--) {
            day = workingDayBefore(day);
        }
        return day;
    }
}

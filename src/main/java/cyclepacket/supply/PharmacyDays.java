package cyclepacket.supply;

import cyclepacket.plan.Pharmacy;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** The pharmacy's calendar: when it works, when it ships, and the last hour at which an order still comes in time. */
public record PharmacyDays(Pharmacy pharmacy, ZoneId zone) {
    /** How far back an order can lie: beyond this the pharmacy's rules themselves cannot be met. A technical limit. */
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

    /** Whether a parcel leaves on this day. */
    public boolean ships(LocalDate day) {
        return pharmacy.ships().contains(day.getDayOfWeek())
                && !pharmacy.closed().contains(day);
    }

    /** Whether a parcel leaves on any of so many days. */
    public boolean shipsWithin(LocalDate first, int days) {
        return IntStream.range(0, days).mapToObj(first::plusDays).anyMatch(this::ships);
    }

    /** The day a parcel arrives that leaves on {@code shipped}; empty when no working day comes. */
    Optional<LocalDate> arrival(LocalDate shipped) {
        return workingDaysOn(shipped, pharmacy.arrivesAfterWorkingDays(), day -> day.plusDays(1));
    }

    /** So many working days on from a day, in the direction of {@code step}; the day itself for none. */
    private Optional<LocalDate> workingDaysOn(LocalDate from, int count, UnaryOperator<LocalDate> step) {
        LocalDate day = from;
        int left = count;
        for (int tries = 0; left > 0; tries++) {
            if (tries == FARTHEST_DAYS) {
                return Optional.empty();
            }
            day = step.apply(day);
            left -= isWorkingDay(day) ? 1 : 0;
        }
        return Optional.of(day);
    }

    private Optional<LocalDate> workingDaysBefore(LocalDate day, int count) {
        return workingDaysOn(day, count, later -> later.minusDays(1));
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
        Optional<LocalDate> deadline = sameDay ? Optional.of(needed) : workingDaysBefore(needed, 1);
        return deadline.flatMap(this::lastShipping)
                .flatMap(this::requestedOn)
                .map(day -> day.atTime(pharmacy.orderBy()).atZone(zone));
    }

    /** Authorisation takes working days; a parcel that leaves on a free day must be authorised on the working day before. */
    private Optional<LocalDate> requestedOn(LocalDate ship) {
        int days = pharmacy.authorisationWorkingDays();
        return days == 0 ? Optional.of(ship) : workingDaysBefore(ship, days + (isWorkingDay(ship) ? 0 : 1));
    }

    private Optional<LocalDate> lastShipping(LocalDate deadline) {
        return IntStream.range(0, FARTHEST_DAYS)
                .mapToObj(deadline::minusDays)
                .filter(this::ships)
                .filter(ship ->
                        arrival(ship).filter(day -> !day.isAfter(deadline)).isPresent())
                .findFirst();
    }
}

package cyclepacket.supply;

import cyclepacket.plan.Pharmacy;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.HashSet;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/** One pharmacy and one evening that may be short, with the last hour to order found by trying every half hour. */
record CalendarWalk(Pharmacy pharmacy, LocalDate needed, LocalTime injectionAt) {
    private static final int FARTHEST = 60;

    static CalendarWalk random(Random random) {
        LocalDate needed = LocalDate.of(2027, 1, 1).plusDays(random.nextInt(700));
        Set<DayOfWeek> ships = new HashSet<>();
        while (ships.isEmpty()) {
            for (DayOfWeek day : DayOfWeek.values()) {
                if (random.nextInt(5) < (day.getValue() > 5 ? 1 : 3)) {
                    ships.add(day);
                }
            }
        }
        Set<LocalDate> closed = new HashSet<>();
        for (int each = random.nextInt(8); each > 0; each--) {
            closed.add(needed.minusDays(random.nextInt(14)));
        }
        Pharmacy pharmacy = new Pharmacy(
                "the pharmacy",
                LocalTime.of(8 + random.nextInt(10), 0),
                ships,
                random.nextInt(4),
                random.nextInt(3),
                closed,
                random.nextBoolean() ? Optional.of(LocalTime.of(10 + random.nextInt(10), 0)) : Optional.empty());
        return new CalendarWalk(pharmacy, needed, LocalTime.of(random.nextInt(24), 30 * random.nextInt(2)));
    }

    /** The latest half hour up to the pharmacy's hour at which an order still comes in time. */
    Optional<LocalDateTime> lastOrder() {
        for (int back = 0; back < FARTHEST; back++) {
            for (int half = 47; half >= 0; half--) {
                LocalDateTime ordered = needed.minusDays(back).atStartOfDay().plusMinutes(30L * half);
                if (!ordered.toLocalTime().isAfter(pharmacy.orderBy()) && isTaken(ordered) && isInTime(ordered)) {
                    return Optional.of(ordered);
                }
            }
        }
        return Optional.empty();
    }

    /** An order is taken on the days it can leave; a request for authorisation on working days. */
    private boolean isTaken(LocalDateTime ordered) {
        return pharmacy.authorisationWorkingDays() == 0 || isWorking(ordered.toLocalDate());
    }

    private boolean isInTime(LocalDateTime ordered) {
        LocalDate day = ordered.toLocalDate();
        for (int left = pharmacy.authorisationWorkingDays(); left > 0; ) {
            day = day.plusDays(1);
            left -= isWorking(day) ? 1 : 0;
        }
        while (!leaves(day)) {
            day = day.plusDays(1);
        }
        for (int left = pharmacy.arrivesAfterWorkingDays(); left > 0; ) {
            day = day.plusDays(1);
            left -= isWorking(day) ? 1 : 0;
        }
        for (LocalDate last = needed; !last.isBefore(day); last = last.minusDays(1)) {
            if (last.equals(needed) ? mayArriveOn(needed) : isWorking(last)) {
                return true;
            }
        }
        return false;
    }

    boolean mayArriveOn(LocalDate day) {
        return isWorking(day)
                && pharmacy.sameDayArrivalFrom().isPresent()
                && !pharmacy.sameDayArrivalFrom().get().isAfter(injectionAt);
    }

    private boolean leaves(LocalDate day) {
        return pharmacy.ships().contains(day.getDayOfWeek())
                && !pharmacy.closed().contains(day);
    }

    private boolean isWorking(LocalDate day) {
        return day.getDayOfWeek().getValue() <= 5 && !pharmacy.closed().contains(day);
    }
}

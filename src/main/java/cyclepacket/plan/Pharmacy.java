package cyclepacket.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * When the pharmacy takes an order and when the parcel arrives.
 *
 * @param orderBy clinic time; an order by then on a shipping day leaves that day
 * @param arrivesAfterWorkingDays working days from shipping to arrival, 0 to 30
 * @param authorisationWorkingDays working days that approval by a payer takes before the order, 0 to 60
 * @param closed days it neither ships nor delivers, besides Saturdays and Sundays
 * @param sameDayArrivalFrom the hour from which a parcel of the same day may be counted on, if the clinic allows that
 */
public record Pharmacy(
        String name,
        LocalTime orderBy,
        Set<DayOfWeek> ships,
        int arrivesAfterWorkingDays,
        int authorisationWorkingDays,
        Set<LocalDate> closed,
        Optional<LocalTime> sameDayArrivalFrom) {
    public Pharmacy {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(orderBy, "orderBy");
        ships = Set.copyOf(ships);
        closed = Set.copyOf(closed);
        Objects.requireNonNull(sameDayArrivalFrom, "sameDayArrivalFrom");
        if (ships.isEmpty()) {
            throw new cyclepacket.quantity.Refusal("a pharmacy ships on at least one day", "list its shipping days");
        }
        if (arrivesAfterWorkingDays < 0 || arrivesAfterWorkingDays > 30) {
            throw new cyclepacket.quantity.Refusal("arrives-after-working-days is from 0 to 30", "ask the pharmacy");
        }
        if (authorisationWorkingDays < 0 || authorisationWorkingDays > 60) {
            throw new cyclepacket.quantity.Refusal("authorisation-working-days is from 0 to 60", "ask the payer");
        }
    }
}

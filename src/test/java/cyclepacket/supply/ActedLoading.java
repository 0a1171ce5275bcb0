package cyclepacket.supply;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Loads boxes in one order and gives every evening's dose out of them, as a patient would; none of the sums under test are
 * used. Contents and doses are whole units.
 *
 * @param evenings on which a box was left for the next one, or ran out
 * @param left units that stayed behind in opened boxes
 * @param expiries of the opened boxes, in order
 */
record ActedLoading(int evenings, int left, List<LocalDate> expiries) implements Comparable<ActedLoading> {

    /** One box at home. */
    record Box(int number, int content, LocalDate expires, Optional<LocalDate> opened) {
        boolean isPartUsed() {
            return opened.isPresent();
        }
    }

    static ActedLoading of(List<Box> order, LocalDate first, int days, int dose, int openedDays) {
        Set<LocalDate> evenings = new TreeSet<>();
        List<LocalDate> expiries = new ArrayList<>();
        int left = 0;
        int next = 0;
        int inPen = 0;
        LocalDate lastUse = LocalDate.MAX;
        boolean isLoaded = false;
        for (LocalDate evening = first; evening.isBefore(first.plusDays(days)); evening = evening.plusDays(1)) {
            int wanted = dose;
            while (wanted > 0) {
                boolean isTooOld = evening.isAfter(lastUse);
                if (!isLoaded || inPen == 0 || isTooOld) {
                    if (isLoaded) {
                        evenings.add(evening);
                        left += inPen;
                    }
                    if (next == order.size()) {
                        return new ActedLoading(evenings.size(), left, expiries);
                    }
                    Box box = order.get(next++);
                    expiries.add(box.expires());
                    inPen = box.content();
                    lastUse = box.opened().orElse(evening).plusDays(openedDays - 1L);
                    isLoaded = true;
                    continue;
                }
                int given = Math.min(wanted, inPen);
                wanted -= given;
                inPen -= given;
            }
        }
        return new ActedLoading(evenings.size(), left + inPen, expiries);
    }

    @Override
    public int compareTo(ActedLoading other) {
        return Comparator.comparingInt(ActedLoading::evenings)
                .thenComparingInt(ActedLoading::left)
                .thenComparing(ActedLoading::expiries, ActedLoading::compareDates)
                .compare(this, other);
    }

    private static int compareDates(List<LocalDate> one, List<LocalDate> other) {
        for (int index = 0; index < Math.min(one.size(), other.size()); index++) {
            int order = one.get(index).compareTo(other.get(index));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(one.size(), other.size());
    }
}

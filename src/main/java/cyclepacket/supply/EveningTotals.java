package cyclepacket.supply;

import cyclepacket.ledger.Draw;
import cyclepacket.plan.HouseRules.InUseDayOne;
import cyclepacket.plan.Medicine;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

/**
 * Which evening a total falls on, and how far a container reaches that is opened there. All totals are in thousandths,
 * counted from the start of the plan, with the least content alone.
 */
final class EveningTotals {
    /** No evening: nothing was in use before; a sign by definition. */
    static final int NONE = -1;

    private final boolean isPen;
    private final int openedDays;
    private final InUseDayOne dayOne;
    private final LocalDate[] dates;
    private final long[] before;
    private final long[] after;
    private final int[] evenings;
    private final long[] limits;

    EveningTotals(Medicine medicine, InUseDayOne dayOne, List<Draw> draws) {
        isPen = medicine.device().pen().isPresent();
        openedDays = medicine.device().daysOnceOpened().orElse(0);
        this.dayOne = dayOne;
        int size = draws.size();
        dates = new LocalDate[size];
        before = new long[size];
        after = new long[size];
        evenings = new int[size];
        limits = new long[size];
        for (int index = 0; index < size; index++) {
            Draw draw = draws.get(index);
            dates[index] = draw.date();
            before[index] = draw.before().milliUnits();
            after[index] = draw.after().milliUnits();
            boolean sameEvening = index > 0 && dates[index - 1].equals(dates[index]);
            evenings[index] = index == 0 ? 0 : evenings[index - 1] + (sameEvening ? 0 : 1);
        }
        for (int index = 0; index < size; index++) {
            limits[index] = limitWhenOpened(dates[index]);
        }
    }

    /** Everything drawn by the end of the course. */
    long goal() {
        return after.length == 0 ? 0 : after[after.length - 1];
    }

    private int firstBeyond(long total) {
        int found = Arrays.binarySearch(after, total + 1);
        int index = found >= 0 ? found : -found - 1;
        // Settings without an amount share a total: the first of them is the one.
        while (index > 0 && index < after.length && after[index - 1] > total) {
            index--;
        }
        return index;
    }

    /** The number of the evening on which a container that ends at this total runs dry. */
    int evening(long total) {
        return isPen ? evenings[firstBeyond(total)] : NONE;
    }

    /** The first evening that needs more than this total, which is below the goal. */
    LocalDate firstShort(long total) {
        return dates[firstBeyond(total)];
    }

    /** The last evening that this total covers whole; null when not even the first. */
    LocalDate lastCovered(long total) {
        int first = firstBeyond(total);
        int index = first - 1;
        while (first < dates.length && index >= 0 && dates[index].equals(dates[first])) {
            index--;
        }
        return index < 0 ? null : dates[index];
    }

    /** How far a container with this content reaches that is opened at {@code total}, in-use days counted. */
    long reach(long total, long content) {
        return Math.min(total + content, limits[firstBeyond(total)]);
    }

    /** The same for a container that was opened on a day before. */
    long reach(long total, long content, LocalDate opened) {
        return Math.max(total, Math.min(total + content, limitWhenOpened(opened)));
    }

    /** The total at which a container opened that day must be left; the largest number when it never must. */
    private long limitWhenOpened(LocalDate opened) {
        if (openedDays == 0) {
            return Long.MAX_VALUE;
        }
        LocalDate last =
                dayOne == InUseDayOne.FIRST_USE ? opened.plusDays(openedDays - 1L) : opened.plusDays(openedDays);
        // No date counts as found, so that the search ends at the first that is later.
        int first = -Arrays.binarySearch(dates, last, (date, end) -> date.isAfter(end) ? 1 : -1) - 1;
        return first < dates.length ? before[first] : Long.MAX_VALUE;
    }
}

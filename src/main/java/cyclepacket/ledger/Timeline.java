package cyclepacket.ledger;

import cyclepacket.plan.HouseRules.InUseDayOne;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;

/** The settings in order, as totals in thousandths: which total falls on which setting and which evening. */
final class Timeline {
    private final List<Draw> draws;
    private final int openedDays;
    private final InUseDayOne dayOne;
    private final long grain;

    /**
     * @param openedDays days a container may be used once opened; 0 for containers without such a limit
     * @param step the marks a container ends on, in thousandths: 1 unless the pen only gives whole marks
     */
    Timeline(List<Draw> draws, int openedDays, InUseDayOne dayOne, long step) {
        this.draws = List.copyOf(draws);
        this.openedDays = openedDays;
        this.dayOne = dayOne;
        // A loss of any size moves every later total off the marks.
        grain = draws.stream()
                        .allMatch(draw -> draw.before().milliUnits() % step == 0
                                && draw.after().milliUnits() % step == 0)
                ? step
                : 1;
    }

    /** The distance between two totals at which a container can end, in thousandths. */
    long grain() {
        return grain;
    }

    List<Draw> draws() {
        return draws;
    }

    Draw draw(int index) {
        return draws.get(index);
    }

    int size() {
        return draws.size();
    }

    /** Everything that leaves the containers in the course. */
    long total() {
        return draws.isEmpty() ? 0 : draws.get(size() - 1).after().milliUnits();
    }

    /**
     * The least total that makes a container end on this setting: the total after the setting before it, so that
     * medicine lost between the two belongs here.
     */
    long start(int index) {
        return index == 0 ? 0 : draws.get(index - 1).after().milliUnits();
    }

    /** The first total too large to end on this setting. */
    long endExclusive(int index) {
        return draws.get(index).after().milliUnits();
    }

    /** The setting on which a container runs dry whose total this is; {@link #size} when it outlasts the course. */
    int endOf(long total) {
        return firstWhere(index -> endExclusive(index) > total);
    }

    /** The first setting of which this is true; it must stay true from there on. */
    private int firstWhere(IntPredicate isReached) {
        int from = 0;
        int untilExclusive = size();
        while (from < untilExclusive) {
            int middle = (from + untilExclusive) >>> 1;
            if (isReached.test(middle)) {
                untilExclusive = middle;
            } else {
                from = middle + 1;
            }
        }
        return from;
    }

    /** The first setting of the evening that setting {@code index} belongs to. */
    int firstOfEvening(int index) {
        int first = index;
        while (first > 0 && draws.get(first - 1).date().equals(draws.get(index).date())) {
            first--;
        }
        return first;
    }

    /** The last setting of the evening that setting {@code index} belongs to. */
    int lastOfEvening(int index) {
        int last = index;
        while (last + 1 < size()
                && draws.get(last + 1).date().equals(draws.get(index).date())) {
            last++;
        }
        return last;
    }

    /** The last date a container opened on {@code opened} may be used (day 1 is the opening or the day after it). */
    LocalDate lastUsable(LocalDate opened) {
        return switch (dayOne) {
            case FIRST_USE -> opened.plusDays(openedDays - 1L);
            case DAY_AFTER -> opened.plusDays(openedDays);
        };
    }

    /** The first setting on which a container opened on {@code opened} is past its in-use days. */
    OptionalInt firstPastLimit(LocalDate opened) {
        if (openedDays == 0) {
            return OptionalInt.empty();
        }
        LocalDate last = lastUsable(opened);
        int first = firstWhere(index -> draws.get(index).date().isAfter(last));
        return first < size() ? OptionalInt.of(first) : OptionalInt.empty();
    }
}

package cyclepacket.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One evening on which a container can be opened: with the first setting that goes beyond the total of those before it.
 *
 * @param totals the totals of the containers before it that open it on this evening
 * @param cut the first setting on which it is past its in-use days; before it the container is left
 */
record Opening(Spans totals, OptionalInt cut) {

    /**
     * Every evening a container can be opened, and the case that the course ends before.
     *
     * @param before where the container before it can end
     * @param opened when it was opened, if that was before this plan
     */
    static List<Opening> all(Ends before, Optional<LocalDate> opened, Timeline line) {
        List<Opening> openings = new ArrayList<>();
        Spans totals = before.all();
        int first = totals.isEmpty() ? line.size() : line.endOf(totals.min());
        int index = first < line.size() ? line.firstOfEvening(first) : first;
        while (index < line.size() && line.start(index) <= totals.max()) {
            int last = line.lastOfEvening(index);
            Spans here = totals.between(line.start(index), line.endExclusive(last) - 1);
            if (!here.isEmpty()) {
                openings.add(new Opening(
                        here, line.firstPastLimit(opened.orElse(line.draw(index).date()))));
            }
            index = last + 1;
        }
        Spans never = totals.between(line.total(), Long.MAX_VALUE);
        if (!never.isEmpty()) {
            openings.add(new Opening(never, OptionalInt.empty()));
        }
        return openings;
    }

    /** Whether the container may still be in use on setting {@code index}. */
    boolean isUsableOn(int index) {
        return cut.isEmpty() || cut.getAsInt() > index;
    }
}

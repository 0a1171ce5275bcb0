package cyclepacket.actingout;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the closed form says of one box on the way to its ends; amounts in thousandths.
 *
 * @param leastTotal the least that the boxes up to this one let out
 * @param mostTotal the most
 * @param firstOpening empty when it is not opened in the course
 * @param lastOpening empty when it may never be
 * @param lastSafeDay the last day of use, counted from the first opening
 */
record Trail(
        int box,
        long leastTotal,
        long mostTotal,
        Optional<LocalDate> firstOpening,
        Optional<LocalDate> lastOpening,
        Optional<LocalDate> lastSafeDay) {

    /** Whether a life in which the box was opened on this day, or never, fits. */
    boolean fitsOpening(Optional<LocalDate> opened) {
        if (opened.isEmpty()) {
            return lastOpening.isEmpty();
        }
        boolean notBefore =
                firstOpening.filter(first -> !opened.get().isBefore(first)).isPresent();
        return notBefore && lastOpening.map(last -> !opened.get().isAfter(last)).orElse(true);
    }

    /** The total that had been let out when a box ended, counting unknown settings as whole ones, as the ledger does. */
    static long totalAt(Story story, End end) {
        long counted = 0;
        for (Story.Act act : story.acts()) {
            boolean here = act.date().equals(end.date()) && act.setting() == end.setting();
            counted += act.lostBefore();
            if (here) {
                return end.inUseLimit() ? counted : counted + act.dialled() - end.owed();
            }
            counted += act.deed().does() == Deed.Does.UNKNOWN ? act.ordered() : act.drawn();
            counted += act.lostAfter();
        }
        throw new IllegalStateException("no setting for " + end);
    }

    static Optional<LocalDate> openingOf(Story story, int box) {
        List<LocalDate> opened = story.openedOn();
        return box <= opened.size() ? Optional.of(opened.get(box - 1)) : Optional.empty();
    }
}

package cyclepacket.actingout;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * All that happened to one patient with one set of true contents.
 *
 * @param ends every container that ended, in order
 * @param acts every setting that was tried, in order
 * @param openedOn the evening each opened box was opened on, in order
 * @param coveredUntil the last evening up to which every dose could be given; empty when the first could not
 * @param firstShort the first evening whose dose could not be given whole
 * @param shortBy thousandths that could not be given in all
 */
record Story(
        List<End> ends,
        List<Act> acts,
        List<LocalDate> openedOn,
        Optional<LocalDate> coveredUntil,
        Optional<LocalDate> firstShort,
        long shortBy) {

    Optional<End> endOf(int box) {
        return ends.stream().filter(end -> end.box() == box).findFirst();
    }

    /**
     * One setting as it was lived.
     *
     * @param dialled the number that was set
     * @param drawn what left the containers as this injection, without what was lost apart from it
     * @param shown the number in the window at each stop, in order
     * @param lostBefore lost before it, on a line of its own
     * @param lostWithin lost out of {@code drawn}
     * @param lostAfter lost after it
     * @param deed what was meant
     */
    record Act(
            LocalDate date,
            int setting,
            long ordered,
            long dialled,
            long drawn,
            List<Long> shown,
            long lostBefore,
            long lostWithin,
            long lostAfter,
            Deed deed) {
        Act {
            shown = List.copyOf(shown);
        }
    }
}

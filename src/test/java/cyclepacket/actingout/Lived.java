package cyclepacket.actingout;

import cyclepacket.ledger.Evening.State;
import java.time.LocalDate;
import java.util.List;

/**
 * What a past evening is said to have been.
 *
 * @param given thousandths that reached the patient; -1 when nobody knows
 */
record Lived(LocalDate date, State state, long given) {

    boolean agreesWith(Lived told) {
        return state == told.state && (given == -1 || given == told.given);
    }

    /** What must be said of an evening: an unknown setting leaves it partial, by an amount that is not compared. */
    static Lived really(LocalDate date, List<Story.Act> acts) {
        if (acts.stream().anyMatch(act -> act.deed().does() == Deed.Does.UNKNOWN)) {
            return new Lived(date, State.PARTIAL, -1);
        }
        long given =
                acts.stream().mapToLong(act -> act.drawn() - act.lostWithin()).sum();
        long ordered = acts.stream().mapToLong(Story.Act::ordered).sum();
        boolean missed = acts.stream().allMatch(act -> act.deed().does() == Deed.Does.MISSED);
        State state = missed ? State.MISSED : given == ordered ? State.GIVEN : State.PARTIAL;
        return new Lived(date, state, given);
    }
}

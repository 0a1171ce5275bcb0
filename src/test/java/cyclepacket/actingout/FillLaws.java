package cyclepacket.actingout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.plan.Device.Window;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A number that means a fill which the box cannot have is refused, one within a step of what it can have is not: the
 * same record is told beside a box of another size than the one that was really used.
 */
class FillLaws {
    private static final int PLANS = 10_000;

    @Test
    void refusesANumberBeyondOneStepAndTakesOneWithinIt() {
        int met = 0;
        for (long seed = 0; seed < PLANS; seed++) {
            Case plan = CaseMaker.make(seed);
            if (plan.pen().window() == Window.OWED && readsTheFirstEndForSure(plan)) {
                met++;
                long step = plan.pen().step();
                long content = plan.truth().get(0);
                assertEquals(0, impossible(plan, new Box(content + step, content + 3 * step)), "one step too little");
                assertTrue(
                        impossible(plan, new Box(content + step + 1, content + 3 * step)) > 0,
                        "too little, seed " + seed);
                assertEquals(0, impossible(plan, within(content - 3 * step, content - step)), "one step too much");
                assertTrue(
                        impossible(plan, within(content - 3 * step, content - step - 1)) > 0, "too much, seed " + seed);
            }
        }
        assertTrue(met >= 80, met + " plans with a sure first reading");
    }

    private static Box within(long least, long most) {
        return new Box(Math.max(1, least), Math.max(1, most));
    }

    /** The first end is in the record, read back, and nothing before it leaves any doubt. */
    private static boolean readsTheFirstEndForSure(Case plan) {
        if (!plan.hasPast()
                || plan.started().isPresent()
                || plan.truth().get(0) < 4 * plan.pen().step()) {
            return false;
        }
        for (Story.Act act : plan.live(plan.truth()).acts()) {
            Deed deed = act.deed();
            boolean sure = plan.isPast(act.date()) && deed.writes().window() && isAsOrdered(deed);
            if (!sure) {
                return false;
            }
            if (!act.shown().isEmpty()) {
                return deed.writes().readBack()
                        && act.shown().size() == 1
                        && plan.pen().openedDays() > 6;
            }
        }
        return false;
    }

    private static boolean isAsOrdered(Deed deed) {
        return deed.does() == Deed.Does.ALL && deed.lostBefore() + deed.lostWithin() + deed.lostAfter() == 0;
    }

    private static long impossible(Case plan, Box first) {
        List<Box> boxes = new ArrayList<>(plan.boxes());
        boxes.set(0, first);
        int past = firstEvenings(plan);
        Case told =
                new Case(plan.seed(), plan.pen(), boxes, plan.started(), plan.evenings(), plan.truth()).withPast(past);
        return ClosedForm.of(told).stops().stream()
                .filter(stop -> stop.contains("FILL_IMPOSSIBLE") || stop.contains("NO_END_WRITTEN"))
                .count();
    }

    /** Up to and with the evening of the first end, so that nothing later speaks of another box. */
    private static int firstEvenings(Case plan) {
        End first = plan.live(plan.truth()).ends().get(0);
        return (int) plan.evenings().stream()
                .filter(evening -> !evening.date().isAfter(first.date()))
                .count();
    }
}

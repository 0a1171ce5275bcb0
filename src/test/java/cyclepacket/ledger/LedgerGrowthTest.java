package cyclepacket.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import cyclepacket.course.Course;
import cyclepacket.plan.PlanFiles;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The cost of a ledger grows with the evenings and with what it has to say, and no faster. Bytes are counted and not
 * time, because a busy machine moves the one and not the other; {@code src/bench/growth} measures both.
 */
class LedgerGrowthTest {
    private static long bytes(PlanFiles files) {
        Course course = Course.of(files);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        CycleLedger.of(files, course);
        long before = threads.getCurrentThreadAllocatedBytes();
        CycleLedger.of(files, course);
        return threads.getCurrentThreadAllocatedBytes() - before;
    }

    /** Four times the evenings: 4 times the cost when every end is known; looking for each end on every evening made it 20 to 74. */
    @ParameterizedTest
    @EnumSource(names = {"EXACT", "RECORDED"})
    void costsFourTimesAsMuchForFourTimesTheEvenings(LongPlan.Knowledge knowledge) {
        long hundred = bytes(LongPlan.files(100, knowledge));
        long fourHundred = bytes(LongPlan.files(400, knowledge));
        assertTrue(fourHundred < 6 * hundred, fourHundred + " bytes after " + hundred);
    }

    /** With nothing known the doubt grows with every cartridge, and so does the list of ends that can be. */
    @Test
    void costsNoMoreThanWhatItHasToSay() {
        PlanFiles hundred = LongPlan.files(100, LongPlan.Knowledge.PLANNED);
        PlanFiles fourHundred = LongPlan.files(400, LongPlan.Knowledge.PLANNED);
        long timesAsMuchToSay = said(fourHundred) / said(hundred);
        assertTrue(timesAsMuchToSay > 8, "ends that can be: " + timesAsMuchToSay + " times as many");
        assertTrue(bytes(fourHundred) < (timesAsMuchToSay + 1) * bytes(hundred));
    }

    private static long said(PlanFiles files) {
        MedicineLedger ledger =
                CycleLedger.of(files, Course.of(files)).medicines().get(0);
        return ledger.days().size()
                + ledger.days().stream().mapToInt(day -> day.changes().size()).sum();
    }

    /** 393 evenings of 187.5 are 73,687.5 units: 73 cartridges of 1,000 have ended, and each end was read. */
    @Test
    void placesEveryNumberOfALongRecord() {
        PlanFiles files = LongPlan.files(400, LongPlan.Knowledge.RECORDED);
        MedicineLedger ledger =
                CycleLedger.of(files, Course.of(files)).medicines().get(0);
        assertEquals(0, ledger.doubts().size());
        assertEquals(
                73, ledger.containers().stream().filter(ContainerLine::hasEnded).count());
        assertEquals(400, ledger.days().size());
    }
}

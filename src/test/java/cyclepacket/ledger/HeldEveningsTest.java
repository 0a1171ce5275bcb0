package cyclepacket.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cyclepacket.LaidOut;
import cyclepacket.course.Course;
import cyclepacket.plan.PlanFiles;
import java.io.IOException;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** Evenings without an injection because an order holds it back. The next visit of this plan is on 12 March. */
class HeldEveningsTest {
    private static Evening.State held(int day) throws IOException {
        String date = "2027-03-" + day;
        PlanFiles files = LaidOut.demo("SM-04417-issue-2")
                .revised("what: hold, of: fsh-pen, from: " + date + ", until: " + date)
                .files();
        return CycleLedger.of(files, Course.of(files))
                .of("fsh-pen")
                .orElseThrow()
                .day(LocalDate.parse(date))
                .orElseThrow()
                .evening()
                .state();
    }

    @Test
    void waitForACallFromTheNextVisitOn() throws IOException {
        assertEquals(Evening.State.PLANNED, held(11));
        assertEquals(Evening.State.PROVISIONAL, held(12));
    }
}

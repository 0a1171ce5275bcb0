package cyclepacket.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.plan.Revision;
import cyclepacket.plan.Revision.What;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What later issues move in a row that begins on 10 March. */
class ShiftsTest {
    private final List<Revision> lines = new ArrayList<>();

    private static LocalDate march(int day) {
        return LocalDate.of(2027, 3, day);
    }

    private ShiftsTest told(What what, String of, int from, Integer last, String now) {
        lines.add(new Revision(
                2,
                what,
                Optional.ofNullable(of),
                Optional.of(march(from)),
                Optional.ofNullable(last).map(ShiftsTest::march),
                Optional.ofNullable(now),
                Optional.of("ORD-2"),
                "a nurse (invented)",
                "the patient",
                march(5),
                true));
        return this;
    }

    /** The days from the 6th to the 16th on which the pen is given. */
    private String days() {
        Shifts shifts = new Shifts(lines);
        return IntStream.rangeClosed(6, 16)
                .filter(day -> shifts.isOn("pen", march(day), march(10)))
                .mapToObj(Integer::toString)
                .collect(Collectors.joining(" "));
    }

    @Test
    void beginsWithItsRow() {
        assertEquals("10 11 12 13 14 15 16", days());
        told(What.STOP, "syringe", 11, null, null).told(What.HOLD, "pen", 12, 13, null);
        assertEquals("10 11 12 13 14 15 16", days());
    }

    @Test
    void stopsOnTheDayThatIsTold() {
        assertEquals("10 11 12", told(What.STOP, "pen", 13, null, null).days());
    }

    @Test
    void beginsOnTheDayThatIsTold() {
        assertEquals(
                "8 9 10 11 12 13 14 15 16",
                told(What.START, "pen", 8, null, null).days());
        lines.clear();
        assertEquals("12 13 14 15 16", told(What.START, "pen", 12, null, null).days());
    }

    @Test
    void beginsAgainAfterAStop() {
        told(What.STOP, "pen", 12, null, null).told(What.START, "pen", 14, null, null);
        assertEquals("10 11 14 15 16", days());
        lines.clear();
        told(What.START, "pen", 8, null, null).told(What.STOP, "pen", 10, null, null);
        assertEquals("8 9", days());
    }

    @Test
    void givesNothingOnceTheCycleIsCancelled() {
        told(What.CANCEL, null, 14, null, null).told(What.CANCEL, null, 12, null, null);
        assertEquals("10 11", days());
        Shifts shifts = new Shifts(lines);
        assertEquals(Optional.of(march(12)), shifts.cancelledFrom());
        assertFalse(shifts.isCancelledOn(march(11)));
        assertTrue(shifts.isCancelledOn(march(12)));
        assertFalse(new Shifts(List.of()).isCancelledOn(march(12)));
    }

    @Test
    void looksForDosesFromAnEarlierStartOn() {
        told(What.START, "pen", 8, null, null).told(What.START, "pen", 12, null, null);
        told(What.START, "syringe", 6, null, null);
        assertEquals(march(8), new Shifts(lines).firstDay("pen", march(10)));
        assertEquals(march(7), new Shifts(lines).firstDay("pen", march(7)));
    }

    @Test
    void holdsFromTheFirstToTheLastEveningOfAHold() {
        told(What.HOLD, "pen", 12, 13, null);
        Shifts shifts = new Shifts(lines);
        assertEquals(
                List.of(false, true, true, false),
                IntStream.rangeClosed(11, 14)
                        .mapToObj(day -> shifts.isHeld("pen", march(day)))
                        .toList());
        assertFalse(shifts.isHeld("syringe", march(12)));
    }

    @Test
    void takesTheLastHourThatWasTold() {
        told(What.HOUR, "evening", 12, null, "21:00").told(What.HOUR, "morning", 12, null, "08:00");
        told(What.HOUR, "evening", 14, null, "19:00");
        Shifts shifts = new Shifts(lines);
        LocalTime usual = LocalTime.of(20, 30);
        assertEquals(usual, shifts.hour("evening", march(11), usual));
        assertEquals(LocalTime.of(21, 0), shifts.hour("evening", march(12), usual));
        assertEquals(LocalTime.of(19, 0), shifts.hour("evening", march(14), usual));
    }

    @Test
    void followsOneSwapAfterTheOther() {
        told(What.SWAP, "pen", 12, null, "vial").told(What.SWAP, "vial", 14, null, "syringe");
        Shifts shifts = new Shifts(lines);
        assertEquals("pen", shifts.product("pen", march(11)));
        assertEquals("vial", shifts.product("pen", march(12)));
        assertEquals("syringe", shifts.product("pen", march(14)));
        assertEquals("tablet", shifts.product("tablet", march(14)));
    }
}

package cyclepacket.ledger;

import static cyclepacket.DrawSketch.FIRST;
import static cyclepacket.DrawSketch.draw;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.plan.HouseRules.InUseDayOne;
import java.time.LocalDate;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Two settings of 100 and 50 on the first evening, 100 on the second, and 100 on the fourth after 30 were lost. */
class TimelineTest {
    private static final List<Draw> DRAWS =
            List.of(draw(1, 1, 0, 100), draw(1, 2, 100, 150), draw(2, 1, 150, 250), draw(4, 1, 280, 380));

    private static Timeline line(int openedDays, InUseDayOne dayOne) {
        return new Timeline(DRAWS, openedDays, dayOne, 1);
    }

    private static Timeline line() {
        return line(0, InUseDayOne.FIRST_USE);
    }

    @Test
    void putsALossBeforeTheSettingThatFollowsIt() {
        assertEquals(0, line().start(0));
        assertEquals(100_000, line().start(1));
        assertEquals(250_000, line().start(3));
        assertEquals(380_000, line().endExclusive(3));
        assertEquals(380_000, line().total());
        assertEquals(0, new Timeline(List.of(), 0, InUseDayOne.FIRST_USE, 1).total());
    }

    /** A container that holds exactly what was drawn ends on the setting after; a lost rest belongs to the next setting. */
    @Test
    void findsTheSettingThatATotalRunsDryOn() {
        assertEquals(0, line().endOf(0));
        assertEquals(0, line().endOf(99_999));
        assertEquals(1, line().endOf(100_000));
        assertEquals(2, line().endOf(249_999));
        assertEquals(3, line().endOf(250_000));
        assertEquals(3, line().endOf(379_999));
        assertEquals(4, line().endOf(380_000));
        assertEquals(0, new Timeline(List.of(), 0, InUseDayOne.FIRST_USE, 1).endOf(0));
    }

    @Test
    void beginsEachEveningWithItsFirstSetting() {
        assertEquals(0, line().firstOfEvening(0));
        assertEquals(0, line().firstOfEvening(1));
        assertEquals(2, line().firstOfEvening(2));
    }

    @Test
    void endsEachEveningWithItsLastSetting() {
        assertEquals(1, line().lastOfEvening(0));
        assertEquals(1, line().lastOfEvening(1));
        assertEquals(2, line().lastOfEvening(2));
        assertEquals(3, line().lastOfEvening(3));
    }

    /** Every total is a multiple of 10, and none of 50 after the loss of 30. */
    @Test
    void keepsToWholeMarksUntilALossMovesThem() {
        assertEquals(10_000, new Timeline(DRAWS, 0, InUseDayOne.FIRST_USE, 10_000).grain());
        assertEquals(1, new Timeline(DRAWS, 0, InUseDayOne.FIRST_USE, 50_000).grain());
        assertEquals(50_000, new Timeline(DRAWS.subList(0, 3), 0, InUseDayOne.FIRST_USE, 50_000).grain());
        Draw uneven = draw(1, 1, 0, 120);
        assertEquals(1, new Timeline(List.of(uneven), 0, InUseDayOne.FIRST_USE, 50_000).grain());
    }

    /** First use is day 1, so 2 days end on the day after the opening; a clinic may count from the day after. */
    @Test
    void countsInUseDaysAsTheClinicDoes() {
        assertEquals(FIRST.plusDays(1), line(2, InUseDayOne.FIRST_USE).lastUsable(FIRST));
        assertEquals(FIRST.plusDays(2), line(2, InUseDayOne.DAY_AFTER).lastUsable(FIRST));
        assertEquals(OptionalInt.of(3), line(2, InUseDayOne.FIRST_USE).firstPastLimit(FIRST));
        assertEquals(OptionalInt.of(2), line(1, InUseDayOne.FIRST_USE).firstPastLimit(FIRST));
        assertEquals(OptionalInt.empty(), line(4, InUseDayOne.FIRST_USE).firstPastLimit(FIRST));
        assertEquals(OptionalInt.empty(), line().firstPastLimit(FIRST.minusDays(300)));
    }

    private static String openings(Spans before, Optional<LocalDate> opened, Timeline line) {
        Ends ends = new Ends(before, new TreeMap<>(), OptionalInt.empty());
        return Opening.all(ends, opened, line).stream()
                .map(opening -> opening.totals().min() + ".." + opening.totals().max()
                        + (opening.cut().isPresent() ? " cut " + opening.cut().getAsInt() : ""))
                .collect(Collectors.joining(", "));
    }

    /** Opened by the first injection that goes beyond what the containers before it gave. */
    @Test
    void opensAContainerOnTheEveningThatNeedsIt() {
        Timeline line = line(2, InUseDayOne.FIRST_USE);
        assertEquals(
                "0..149999 cut 3, 150000..249999 cut 3, 250000..379999, 380000..400000",
                openings(Spans.of(0, 400_000, 1), Optional.empty(), line));
        assertEquals("150000..150000 cut 3", openings(Spans.of(150_000, 150_000, 1), Optional.empty(), line));
        assertEquals("0..0 cut 2", openings(Spans.of(0, 0, 1), Optional.of(FIRST.minusDays(1)), line));
    }

    @Test
    void usesAContainerBeforeItsCut() {
        Opening opening = new Opening(Spans.of(0, 0, 1), OptionalInt.of(2));
        assertTrue(opening.isUsableOn(1));
        assertFalse(opening.isUsableOn(2));
        assertTrue(new Opening(Spans.of(0, 0, 1), OptionalInt.empty()).isUsableOn(99));
    }

    private static Ends ends(Spans spans, TreeMap<Integer, Long> limits) {
        return new Ends(spans, limits, OptionalInt.empty());
    }

    private static String outcomes(Ends ends) {
        return ends.outcomes(line()).stream()
                .map(outcome -> outcome.draw() + (outcome.isLimit() ? " limit " : " ")
                        + outcome.totals().min() + ".." + outcome.totals().max())
                .collect(Collectors.joining(", "));
    }

    /** A container ends on the first injection with more drawn than it holds: at exactly 100 on the second setting. */
    @Test
    void endsOnTheFirstInjectionBeyondIt() {
        assertEquals("0 99999..99999, 1 100000..100000", outcomes(ends(Spans.of(99_999, 100_000, 1), new TreeMap<>())));
        assertEquals("", outcomes(ends(Spans.of(380_000, 400_000, 1), new TreeMap<>())));
        TreeMap<Integer, Long> limits = new TreeMap<>();
        limits.put(3, 280_000L);
        assertEquals("2 249999..249999, 3 limit 280000..280000", outcomes(ends(Spans.of(249_999, 249_999, 1), limits)));
    }

    @Test
    void isSureOfAnEveningWhenEveryContentEndsOnIt() {
        Ends sure = ends(Spans.of(0, 149_999, 1), new TreeMap<>());
        assertTrue(sure.surelyEnds(line()));
        assertEquals(Optional.of(FIRST), sure.certainEvening(line()));
        Ends twoEvenings = ends(Spans.of(149_999, 150_000, 1), new TreeMap<>());
        assertTrue(twoEvenings.surelyEnds(line()));
        assertEquals(Optional.empty(), twoEvenings.certainEvening(line()));
        Ends lasting = ends(Spans.of(370_000, 380_000, 1), new TreeMap<>());
        assertFalse(lasting.surelyEnds(line()));
        assertEquals(Optional.empty(), lasting.certainEvening(line()));
        assertTrue(ends(Spans.of(370_000, 379_999, 1), new TreeMap<>()).surelyEnds(line()));
    }

    @Test
    void narrowsByReadingsAndSettings() {
        TreeMap<Integer, Long> limits = new TreeMap<>();
        limits.put(2, 150_000L);
        limits.put(3, 280_000L);
        Ends all = ends(Spans.of(90_000, 300_000, 1), limits);
        assertEquals(90_000, all.min());
        assertEquals(300_000, all.max());
        assertEquals("{2=150000}", all.before(2, line()).limits().toString());
        assertEquals(149_999, all.before(2, line()).max() - 1);
        assertEquals("{3=280000}", all.within(150_001, 280_000).limits().toString());
        assertEquals("{2=150000}", all.within(150_000, 279_999).limits().toString());
        BitSet oneAndTwo = new BitSet();
        oneAndTwo.set(1, 3);
        Ends proven = all.without(oneAndTwo, line());
        assertEquals(99_999, proven.empty().list().get(0).most());
        assertEquals(250_000, proven.empty().list().get(1).least());
        assertTrue(Ends.none().isEmpty());
        assertFalse(ends(Spans.NONE, limits).isEmpty());
        assertFalse(ends(Spans.of(0, 0, 1), new TreeMap<>()).isEmpty());
    }
}

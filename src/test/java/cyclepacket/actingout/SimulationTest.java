package cyclepacket.actingout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.plan.Device.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Shows that the acting-out itself is right, on figures worked out by hand as a careful navigator does it. The overfill
 * figures are common practice of the trade, no published source.
 */
class SimulationTest {
    private static final LocalDate NIGHT_1 = LocalDate.parse("2027-03-05");

    @Test
    void findsFirstAndSecondChangeOfThreeHundredsAtEachOverfill() {
        int[] firstNight = {3, 3, 3, 3, 3, 4};
        int[] firstOwed = {75, 60, 45, 30, 15, 125};
        int[] secondNight = {5, 6, 6, 6, 6, 7};
        int[] secondOwed = {25, 120, 90, 60, 30, 125};
        for (int row = 0; row < 6; row++) {
            Story story = live(pen(25_000, 450), nights(10, 125), filled(300, row * 5, 4));
            assertEquals(
                    expected(1, firstNight[row], 1, firstOwed[row] * 1000L), told(story.endOf(1)), "first, row " + row);
            assertEquals(
                    expected(2, secondNight[row], 1, secondOwed[row] * 1000L),
                    told(story.endOf(2)),
                    "second, row " + row);
        }
    }

    @Test
    void growsTheDoubtWithEveryNineHundred() {
        int[] overfills = {0, 5, 10, 15, 20, 25};
        assertEquals(List.of(5, 5, 5, 5, 5, 6), nightsOfEnd(1, overfills));
        assertEquals(List.of(9, 9, 9, 10, 10, 11), nightsOfEnd(2, overfills));
        assertEquals(List.of(13, 13, 14, 14, 15, 16), nightsOfEnd(3, overfills));
        assertEquals(expected(1, 5, 1, 225_000), told(nineHundreds(0).endOf(1)));
        assertEquals(expected(1, 5, 1, 45_000), told(nineHundreds(20).endOf(1)));
        assertEquals(expected(1, 5, 1, 90_000), told(nineHundreds(15).endOf(1)));
    }

    @Test
    void followsADoseChangeAndAReading() {
        List<Evening> nights = new ArrayList<>(nights(4, 175));
        nights.addAll(nightsFrom(5, 8, 125));
        Pen pen = pen(25_000, 450);
        assertEquals(
                expected(1, 4, 1, 100_000),
                told(live(pen, nights, units(600, 600)).endOf(1)));
        assertEquals(
                expected(1, 5, 1, 75_000),
                told(live(pen, nights, units(750, 750)).endOf(1)));
        Story least = live(pen, nights, units(725, 600, 600));
        Story most = live(pen, nights, units(725, 750, 750));
        assertEquals(expected(1, 5, 1, 100_000), told(least.endOf(1)));
        assertEquals(expected(2, 10, 1, 125_000), told(least.endOf(2)));
        assertEquals(expected(2, 11, 1, 100_000), told(most.endOf(2)));
        assertEquals(
                expected(2, 9, 1, 125_000),
                told(live(pen, nights, units(600, 600, 600)).endOf(2)));
        assertEquals(
                expected(2, 11, 1, 75_000),
                told(live(pen, nights, units(750, 750, 600)).endOf(2)));
    }

    @Test
    void neverMeetsTheReadingThatRaisesTheAlarm() {
        List<Evening> nights = nights(3, 175);
        for (int content = 600; content <= 750; content++) {
            assertEquals(
                    Optional.empty(),
                    told(live(pen(25_000, 450), nights, units(content, 600)).endOf(1)));
        }
        assertEquals(
                expected(1, 3, 1, 150_000),
                told(live(pen(25_000, 450), nights, units(375, 600)).endOf(1)));
    }

    @Test
    void splitsADoseAboveTheDialAndStopsInOneOfItsParts() {
        Pen equal = pen(25_000, 450);
        Pen full = new Pen(Window.OWED, 25_000, 25_000, 450_000, 28, false, true);
        assertEquals(thousandths(275_000, 250_000), equal.settingsOf(525_000));
        assertEquals(thousandths(450_000, 75_000), full.settingsOf(525_000));
        List<Evening> nights = nightsOf(full, 1, 9, 525_000);
        Story least = live(full, nights, units(900, 900, 900, 900, 900, 900));
        assertEquals(expected(1, 2, 1, 75_000), told(least.endOf(1)));
        assertEquals(5, least.ends().size(), "changes in nine nights");
        assertEquals(25, 2 * 9 + least.ends().size() + 2, "needles with two to spare");
        assertEquals(
                expected(1, 3, 1, 375_000),
                told(live(full, nights, units(1125, 1125)).endOf(1)));
    }

    @Test
    void throwsAwayAContainerPastItsDays() {
        LocalDate opened = LocalDate.parse("2026-11-26");
        List<Evening> nights = IntStream.range(0, 40)
                .mapToObj(day -> Evening.toCome(opened.plusDays(day), List.of(12_500L)))
                .toList();
        Pen firstUse = new Pen(Window.OWED, 12_500, 12_500, 400_000, 28, false, false);
        Pen dayAfter = new Pen(Window.OWED, 12_500, 12_500, 400_000, 28, true, false);
        assertEquals(LocalDate.parse("2026-12-23"), firstUse.lastDayOf(opened));
        assertEquals(LocalDate.parse("2026-12-24"), dayAfter.lastDayOf(opened));
        Story story = live(firstUse, nights, units(900, 900));
        assertEquals(
                new End(1, LocalDate.parse("2026-12-24"), 1, true, 0, 0),
                story.ends().get(0));
        assertEquals(LocalDate.parse("2026-12-24"), story.openedOn().get(1));
        Story later = live(dayAfter, nights, units(900, 900));
        assertEquals(LocalDate.parse("2026-12-25"), later.ends().get(0).date());
    }

    @Test
    void actsTheFirstSampleOfTheContract() {
        List<Evening> nights = nightsOf(pen(12_500, 400), 1, 13, 187_500);
        Story least = live(pen(12_500, 400), nights, units(600, 900));
        Story most = live(pen(12_500, 400), nights, units(720, 1035));
        assertEquals(expected(1, 4, 1, 150_000), told(least.endOf(1)));
        assertEquals(expected(1, 4, 1, 30_000), told(most.endOf(1)));
        assertEquals(NIGHT_1.plusDays(8), least.endOf(2).orElseThrow().date(), "2027-03-13");
        assertEquals(NIGHT_1.plusDays(9), most.endOf(2).orElseThrow().date(), "2027-03-14");
        assertEquals(Optional.of(NIGHT_1.plusDays(7)), least.coveredUntil());
        assertEquals(Optional.of(NIGHT_1.plusDays(8)), most.coveredUntil());
        assertEquals(Optional.of(NIGHT_1.plusDays(8)), least.firstShort());
        assertEquals(937_500, least.shortBy());
    }

    @Test
    void actsTheSecondSampleOfTheContract() {
        List<Evening> nights = new ArrayList<>(nightsOf(pen(12_500, 400), 1, 4, 187_500));
        nights.addAll(nightsOf(pen(12_500, 400), 5, 4, 212_500));
        Story least = live(pen(12_500, 400), nights, thousandths(662_500, 900_000));
        Story most = live(pen(12_500, 400), nights, thousandths(662_500, 1_035_000));
        assertEquals(expected(1, 4, 1, 87_500), told(least.endOf(1)));
        assertEquals(expected(2, 8, 1, 37_500), told(least.endOf(2)));
        assertEquals(Optional.empty(), most.endOf(2));
        assertEquals(
                expected(2, 8, 1, 12_500),
                told(live(pen(12_500, 400), nights, thousandths(662_500, 925_000))
                        .endOf(2)));
        assertEquals(Optional.of(NIGHT_1.plusDays(6)), least.coveredUntil());
        assertEquals(37_500, least.shortBy());
    }

    @Test
    void givesNothingFromAContainerThatIsExactlyEmpty() {
        Story story = live(pen(25_000, 450), nights(5, 150), units(600, 600));
        assertEquals(expected(1, 5, 1, 150_000), told(story.endOf(1)));
    }

    @Test
    void letsASixHundredGiveFourFullDosesAndStopOnTheFifthOrSixth() {
        for (int content = 600; content <= 750; content++) {
            End end = live(pen(25_000, 450), nights(7, 150), units(content, 600))
                    .endOf(1)
                    .orElseThrow();
            assertTrue(List.of(4L, 5L).contains(NIGHT_1.until(end.date()).getDays() * 1L), end.toString());
        }
        Story story = live(pen(25_000, 450), nights(7, 150), units(675, 600));
        assertEquals(75_000, story.endOf(1).orElseThrow().shown());
    }

    @Test
    void refusesToDialPastWhatIsLeft() {
        Pen left = new Pen(Window.LEFT, 12_500, 12_500, 400_000, 28, false, false);
        Story story = live(left, nightsOf(left, 1, 3, 225_000), thousandths(290_400, 600_000));
        assertEquals(
                new End(1, NIGHT_1.plusDays(1), 1, false, 162_500, 62_500),
                story.ends().get(0));
    }

    private static Story nineHundreds(int overfill) {
        return live(pen(25_000, 450), nights(17, 225), filled(900, overfill, 5));
    }

    private static List<Integer> nightsOfEnd(int box, int... overfills) {
        return Arrays.stream(overfills)
                .mapToObj(overfill -> NIGHT_1.until(nineHundreds(overfill)
                                        .endOf(box)
                                        .orElseThrow()
                                        .date())
                                .getDays()
                        + 1)
                .collect(Collectors.toList());
    }

    private static Story live(Pen pen, List<Evening> nights, List<Long> contents) {
        return Patient.live(pen, nights, contents, Optional.empty());
    }

    private static Pen pen(long step, int most) {
        return new Pen(Window.OWED, step, step, most * 1000L, 28, false, false);
    }

    private static List<Evening> nights(int count, int dose) {
        return nightsFrom(1, count, dose);
    }

    private static List<Evening> nightsFrom(int first, int count, int dose) {
        return nightsOf(pen(25_000, 450), first, count, dose * 1000L);
    }

    private static List<Evening> nightsOf(Pen pen, int first, int count, long dose) {
        return IntStream.range(first - 1, first - 1 + count)
                .mapToObj(day -> Evening.toCome(NIGHT_1.plusDays(day), pen.settingsOf(dose)))
                .toList();
    }

    private static List<Long> filled(int label, int overfillPercent, int count) {
        return IntStream.range(0, count)
                .mapToObj(box -> label * 10L * (100 + overfillPercent))
                .toList();
    }

    private static List<Long> units(int... amounts) {
        return Arrays.stream(amounts).mapToObj(amount -> amount * 1000L).toList();
    }

    private static List<Long> thousandths(long... amounts) {
        return Arrays.stream(amounts).boxed().toList();
    }

    private static Optional<String> expected(int box, int night, int setting, long owed) {
        return Optional.of(box + ": " + NIGHT_1.plusDays(night - 1) + " " + setting + " " + owed);
    }

    private static Optional<String> told(Optional<End> end) {
        return end.map(it -> it.box() + ": " + it.date() + " " + it.setting() + " " + it.owed());
    }
}

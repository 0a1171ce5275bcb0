package cyclepacket.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.PlanSketch;
import cyclepacket.course.Course;
import cyclepacket.plan.Device;
import cyclepacket.plan.HouseRules;
import cyclepacket.plan.RecordLine.Given;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers worked by hand; common practice of the trade, no published source, unless a test names one. */
class WorkedNumbersTest {
    private static MedicineLedger ledger(PlanSketch sketch) {
        return CycleLedger.of(sketch.files(), Course.of(sketch.files()))
                .of(PlanSketch.PEN)
                .orElseThrow();
    }

    /** The night, counted from 1, on which container {@code leaving} can end, with what is owed: "3: 75". */
    private static String ends(PlanSketch sketch, int leaving) {
        MedicineLedger ledger = ledger(sketch);
        return ledger.days().stream()
                .flatMap(day -> day.changes().stream()
                        .filter(change -> change.leaving() == leaving)
                        .map(change -> night(sketch, day.evening().date()) + ": "
                                + change.owed().map(WorkedNumbersTest::text).orElse("in-use limit")))
                .collect(Collectors.joining(", "));
    }

    private static long night(PlanSketch sketch, LocalDate date) {
        return sketch.start.until(date).getDays() + 1L;
    }

    private static String text(Owed owed) {
        String least =
                (owed.isAboveZero() ? "above " : "") + owed.least().number().toPlainString();
        return owed.isExact() ? least : least + " to " + owed.most().number().toPlainString();
    }

    @ParameterizedTest
    @CsvSource({
        "300, 3: 75, 5: 25",
        "315, 3: 60, 6: 120",
        "330, 3: 45, 6: 90",
        "345, 3: 30, 6: 60",
        "360, 3: 15, 6: 30",
        "375, 4: 125, 7: 125"
    })
    void findsTheNightOfEachFillForThreeHundredAtOneTwentyFive(String content, String first, String second) {
        PlanSketch sketch = new PlanSketch()
                .size("300", content, content)
                .home("300", "300", "300")
                .dose(1, "125");
        assertEquals(first, ends(sketch, 1));
        assertEquals(second, ends(sketch, 2));
    }

    @Test
    void letsTheDoubtGrowWithEveryLargeCartridge() {
        PlanSketch sketch = new PlanSketch()
                .size("900", "900", "1125")
                .home("900", "900", "900", "900")
                .dose(1, "225");
        sketch.days = 20;
        assertEquals("5: above 0 to 225, 6: 225", ends(sketch, 1));
        assertEquals(
                List.of("9", "11"),
                List.of(
                        String.valueOf(night(
                                sketch,
                                ledger(sketch).changes().get(1).firstEnd().orElseThrow())),
                        String.valueOf(night(
                                sketch,
                                ledger(sketch).changes().get(1).lastEnd().orElseThrow()))));
        ContainerLine third = ledger(sketch).changes().get(2);
        assertEquals(13, night(sketch, third.firstEnd().orElseThrow()));
        assertEquals(16, night(sketch, third.lastEnd().orElseThrow()));
    }

    @Test
    void owesFortyFiveAtTwentyPercentOverfill() {
        PlanSketch sketch =
                new PlanSketch().size("900", "900", "1080").home("900").dose(1, "225");
        assertEquals("5: 45 to 225", ends(sketch, 1));
    }

    @Test
    void isCertainOfNightFiveAtFifteenPercent() {
        PlanSketch sketch =
                new PlanSketch().size("900", "900", "1035").home("900", "900").dose(1, "225");
        MedicineLedger ledger = ledger(sketch);
        DayChange change = ledger.day(sketch.night(5)).orElseThrow().changes().get(0);
        assertTrue(change.isCertain());
        assertEquals("5: 90 to 225", ends(sketch, 1));
        assertEquals(9, night(sketch, ledger.changes().get(1).firstEnd().orElseThrow()));
        assertEquals(10, night(sketch, ledger.changes().get(1).lastEnd().orElseThrow()));
    }

    private static PlanSketch doseChange() {
        PlanSketch sketch = new PlanSketch()
                .size("600", "600", "750")
                .home("600", "600")
                .dose(1, "175")
                .dose(5, "125");
        sketch.step = "12.5";
        sketch.least = "12.5";
        return sketch;
    }

    @Test
    void reAnchorsOnWhatThePatientReads() {
        assertEquals("4: above 0 to 100, 5: 75 to 125", ends(doseChange(), 1));
        assertEquals(
                9,
                night(
                        doseChange(),
                        ledger(doseChange()).changes().get(1).firstEnd().orElseThrow()));
        assertEquals(
                11,
                night(
                        doseChange(),
                        ledger(doseChange()).changes().get(1).lastEnd().orElseThrow()));

        PlanSketch fourth = doseChange();
        for (int night = 1; night <= 4; night++) {
            fourth.happened(night, "175", "0");
        }
        assertEquals("5: 75 to 125", ends(fourth, 1));

        PlanSketch fifth = fourth.happened(5, "125", "100");
        assertEquals("5: 100", ends(fifth, 1));
        assertEquals("725 units", ledger(fifth).containers().get(0).leastTotal().toString());
        assertEquals("725 units", ledger(fifth).containers().get(0).mostTotal().toString());
        assertEquals("10: above 0 to 125, 11: 100 to 125", ends(fifth, 2));
    }

    @Test
    void refusesAFillThatNoSizeHas() {
        PlanSketch short375 =
                new PlanSketch().size("600", "600", "750").home("600", "600").dose(1, "175");
        short375.happened(1, "175", "0").happened(2, "175", "0").happened(3, "175", "150");
        assertEquals(
                List.of(RecordDoubt.Kind.FILL_IMPOSSIBLE),
                ledger(short375).doubts().stream().map(RecordDoubt::kind).toList());
    }

    @Test
    void asksForTheUnwrittenCartridgeWhenNothingEverStopped() {
        PlanSketch sketch = new PlanSketch()
                .size("600", "600", "750")
                .home("600", "600")
                .dose(1, "175")
                .dose(5, "125");
        for (int night = 1; night <= 5; night++) {
            sketch.happened(night, night < 5 ? "175" : "125", "0");
        }
        assertEquals(
                List.of(RecordDoubt.Kind.NO_END_WRITTEN),
                ledger(sketch).doubts().stream().map(RecordDoubt::kind).toList());
    }

    /** 187.5 is no setting of steps of 25; 200 and 175 in turn are 1,875 in ten evenings, and never more than 12.5 ahead. */
    @Test
    void givesAnOffStepDoseByTurns() {
        PlanSketch sketch = new PlanSketch().size("900", "900", "900").home("900", "900", "900");
        sketch.days = 10;
        for (int night = 1; night <= 10; night++) {
            sketch.dose(night, night % 2 == 1 ? "200" : "175");
        }
        List<Draw> draws = ledger(sketch).draws();
        assertEquals(PlanSketch.units("1875"), draws.get(9).after());
        for (int night = 1; night <= 10; night++) {
            Dose even = PlanSketch.units("187.5").times(night);
            Dose after = draws.get(night - 1).after();
            assertEquals(night % 2 == 1 ? even.plus(PlanSketch.units("12.5")) : even, after);
        }
    }

    @Test
    void splitsAboveTheDial() {
        PlanSketch sketch = new PlanSketch()
                .size("900", "900", "1125")
                .home("900", "900", "900", "900", "900")
                .dose(1, "525");
        assertEquals(
                "[275 units, 250 units]",
                ledger(sketch).days().get(0).evening().settings().toString());
        sketch.split = HouseRules.SplitDose.FULL_DIAL_FIRST;
        assertEquals(
                "[450 units, 75 units]",
                ledger(sketch).days().get(0).evening().settings().toString());
        MedicineLedger ledger = ledger(sketch);
        DayChange second = ledger.day(sketch.night(2)).orElseThrow().changes().get(0);
        assertEquals(1, second.setting());
        assertEquals("above 0 to 75", text(second.owed().orElseThrow()));
        DayChange third = ledger.day(sketch.night(3)).orElseThrow().changes().get(0);
        assertEquals(1, third.setting());
        assertEquals("375 to 450", text(third.owed().orElseThrow()));
    }

    @Test
    void givesFourFullDosesForCertainFromSixHundred() {
        PlanSketch sketch =
                new PlanSketch().size("600", "600", "750").home("600", "600").dose(1, "150");
        assertEquals("5: above 0 to 150, 6: 150", ends(sketch, 1));
        Optional<LookUpRow> read75 = ledger(sketch).lookUp().stream()
                .filter(row -> row.window().equals(PlanSketch.units("75")))
                .findFirst();
        assertEquals(PlanSketch.units("75"), read75.orElseThrow().fromNext());
    }

    @Test
    void leavesACartridgeAfterItsInUseDays() {
        PlanSketch sketch =
                new PlanSketch().size("900", "900", "900").home("900", "900").dose(1, "25");
        sketch.start = LocalDate.of(2026, 11, 26);
        sketch.doses.clear();
        sketch.dose(1, "25");
        sketch.days = 40;
        assertEquals("29: in-use limit", ends(sketch, 1));
        assertEquals(
                DayChange.Cause.IN_USE_LIMIT,
                ledger(sketch)
                        .day(sketch.night(29))
                        .orElseThrow()
                        .changes()
                        .get(0)
                        .cause());
        assertEquals(
                LocalDate.of(2026, 12, 23),
                ledger(sketch).containers().get(0).lastSafeDay().orElseThrow());
        sketch.dayOne = HouseRules.InUseDayOne.DAY_AFTER;
        assertEquals("30: in-use limit", ends(sketch, 1));
        assertEquals(
                LocalDate.of(2026, 12, 24),
                ledger(sketch).containers().get(0).lastSafeDay().orElseThrow());
    }

    @Test
    void showsWhatIsLeftOnTheOtherKindOfPen() {
        PlanSketch sketch =
                new PlanSketch().size("300", "300", "330").home("300", "300").dose(1, "225");
        sketch.window = Device.Window.LEFT;
        sketch.least = "12.5";
        sketch.step = "12.5";
        assertEquals("2: 125 to 150", ends(sketch, 1));
        assertEquals(
                List.of("125 units/100 units", "137.5 units/87.5 units", "150 units/75 units"),
                ledger(sketch).lookUp().stream()
                        .map(row -> row.fromNext() + "/" + row.window())
                        .toList());
    }

    /** Whole marks only: 425 and 437.5 end on the second evening, 450 to 475 on the third. */
    @Test
    void endsTheOtherKindOfPenOnWholeMarks() {
        PlanSketch sketch =
                new PlanSketch().size("400", "425", "475").home("400", "400").dose(1, "225");
        sketch.window = Device.Window.LEFT;
        sketch.least = "12.5";
        sketch.step = "12.5";
        assertEquals("2: 12.5 to 25, 3: 200 to 225", ends(sketch, 1));
        assertEquals(
                DayChange.Cause.EMPTY,
                ledger(sketch)
                        .day(sketch.night(2))
                        .orElseThrow()
                        .changes()
                        .get(0)
                        .cause());
    }

    /** A thousandth short of four doses of 150; and exactly four, so that the fifth evening opens the next one. */
    @Test
    void tellsAnAlmostFullDoseFromAWholeOne() {
        PlanSketch short599 =
                new PlanSketch().size("600", "599.999", "599.999").home("600").dose(1, "150");
        assertEquals("4: 0.001", ends(short599, 1));
        PlanSketch exact =
                new PlanSketch().size("600", "600", "600").home("600", "600").dose(1, "150");
        assertEquals("5: 150", ends(exact, 1));
        assertEquals(
                Optional.of(exact.night(5)), ledger(exact).containers().get(1).firstOpening());
        assertEquals(
                Optional.of(exact.night(5)), ledger(exact).containers().get(1).lastOpening());
    }

    @Test
    void widensByAWholeSettingThatNobodyKnows() {
        PlanSketch sketch =
                new PlanSketch().size("600", "600", "720").home("600", "600").dose(1, "150");
        sketch.happened(1, new Given.Unknown());
        ContainerLine first = ledger(sketch).containers().get(0);
        assertEquals("600 units", first.leastTotal().toString());
        assertEquals("870 units", first.mostTotal().toString());
    }
}

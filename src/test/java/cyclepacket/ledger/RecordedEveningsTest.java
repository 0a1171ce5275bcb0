package cyclepacket.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.PlanSketch;
import cyclepacket.course.Course;
import cyclepacket.plan.Device;
import cyclepacket.plan.Plan;
import cyclepacket.plan.RecordLine;
import cyclepacket.plan.RecordLine.Given;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What happened replaces what was planned: the state of each evening, what it drew, and what the record leaves open. */
class RecordedEveningsTest {
    private final PlanSketch sketch =
            new PlanSketch().size("900", "900", "1035").home("900", "900").dose(1, "150");

    private MedicineLedger ledger() {
        return CycleLedger.of(sketch.files(), Course.of(sketch.files()))
                .of(PlanSketch.PEN)
                .orElseThrow();
    }

    private Evening night(int number) {
        return ledger().day(sketch.night(number)).orElseThrow().evening();
    }

    private List<String> doubts() {
        return ledger().doubts().stream()
                .map(doubt -> doubt.kind() + " " + doubt.line() + " " + doubt.subject())
                .toList();
    }

    private RecordLine line(int night, int setting, Given given, Optional<String> lost) {
        return new RecordLine(
                sketch.night(night),
                PlanSketch.PEN,
                setting,
                Optional.empty(),
                given,
                List.of(),
                Optional.empty(),
                false,
                lost.map(PlanSketch::units),
                false,
                Optional.empty(),
                Optional.empty());
    }

    private static Given amount(String units) {
        return new Given.Amount(PlanSketch.units(units));
    }

    @Test
    void tellsGivenMissedAndPartialEvenings() {
        sketch.happened(1, "150", "0")
                .happened(2, new Given.Missed())
                .happened(3, "100")
                .happened(4, new Given.Unknown());
        assertEquals(Evening.State.GIVEN, night(1).state());
        assertEquals(Optional.of(PlanSketch.units("150")), night(1).given());
        assertEquals(Evening.State.MISSED, night(2).state());
        assertEquals(Optional.of(PlanSketch.units("0")), night(2).given());
        assertEquals(Evening.State.PARTIAL, night(3).state());
        assertEquals(Evening.State.PARTIAL, night(4).state());
        assertEquals(Evening.State.PLANNED, night(5).state());
        assertEquals(Optional.empty(), night(5).given());
        assertFalse(night(4).isToCome());
        assertTrue(night(5).isToCome());
        assertEquals(List.of(), doubts());
    }

    /** A missed evening draws nothing; a loss draws what was lost, before the setting that follows. */
    @Test
    void movesTheTotalOnlyByWhatLeftTheContainer() {
        sketch.happened(1, "150", "0").happened(2, new Given.Missed());
        sketch.record.add(line(3, 1, new Given.NotWritten(), Optional.of("40")));
        List<Draw> draws = ledger().draws();
        assertEquals(PlanSketch.units("190"), draws.get(1).before());
        assertEquals(PlanSketch.units("340"), draws.get(1).after());
        assertEquals(sketch.night(3), draws.get(1).date());
        assertFalse(draws.get(1).isRecorded());
    }

    @Test
    void countsALossOfAMissedEvening() {
        sketch.record.add(line(1, 1, new Given.Missed(), Optional.of("40")));
        assertEquals(PlanSketch.units("40"), ledger().draws().get(0).before());
    }

    /** From the second issue on every past evening needs a line; the day of the issue itself is still to come. */
    @Test
    void asksForEveryPastEvening() {
        sketch.happened(2, "150", "0");
        assertEquals(List.of("GAP -1 2027-03-05"), doubts());
        sketch.issue = 1;
        assertEquals(List.of(), doubts());
        sketch.issue = 2;
        sketch.prepared = sketch.night(1);
        sketch.record.clear();
        assertEquals(List.of(), doubts());
    }

    @Test
    void asksForTheOtherInjectionOfASplitEvening() {
        sketch.dose(1, "525");
        sketch.happened(1, "275", "0");
        assertEquals(List.of("GAP -1 2027-03-05, injection 2"), doubts());
        assertEquals(Evening.State.PARTIAL, night(1).state());
        sketch.record.clear();
        assertEquals(List.of("GAP -1 2027-03-05"), doubts());
        sketch.record.add(line(1, 1, new Given.Missed(), Optional.empty()));
        assertEquals(List.of(), doubts());
        assertEquals(Evening.State.MISSED, night(1).state());
        sketch.record.clear();
        sketch.record.add(line(1, 2, amount("250"), Optional.empty()));
        sketch.record.add(line(1, 1, amount("275"), Optional.empty()));
        assertEquals(Evening.State.GIVEN, night(1).state());
        assertEquals(List.of(), doubts());
    }

    @Test
    void keepsASecondMissedInjectionPartial() {
        sketch.dose(1, "525");
        sketch.happened(1, "275", "0");
        sketch.record.add(line(1, 2, new Given.Missed(), Optional.empty()));
        assertEquals(Evening.State.PARTIAL, night(1).state());
        assertEquals(List.of(), doubts());
    }

    @Test
    void keepsAnUnknownInjectionBesideAMissedOnePartial() {
        sketch.dose(1, "525");
        sketch.happened(1, new Given.Missed());
        sketch.record.add(line(1, 2, new Given.Unknown(), Optional.empty()));
        assertEquals(Evening.State.PARTIAL, night(1).state());
    }

    @Test
    void dialsNothingForADoseOfZero() {
        sketch.dose(3, "0").dose(4, "150");
        assertEquals(List.of(), night(3).settings());
        assertEquals(12, ledger().draws().size());
    }

    @Test
    void passesOnWhatALineCannotMean() {
        sketch.happened(1, "175", "0");
        assertEquals(List.of("GIVEN_ABOVE_DIALLED 0 175 units of 150 units"), doubts());
    }

    /** A pen that shows what is left stops on its marks; the other kind can stop between them. */
    @Test
    void doubtsANumberBetweenTheMarksOfAPenThatShowsWhatIsLeft() {
        sketch.sizes.clear();
        sketch.size("900", "150", "900");
        sketch.happened(1, "150", "0").happened(2, "150", "60");
        assertEquals(List.of(), doubts());
        sketch.window = Device.Window.LEFT;
        sketch.record.remove(0);
        sketch.record.add(0, line(1, 1, new Given.Missed(), Optional.empty()));
        assertTrue(doubts().contains("WINDOW_OFF_DIAL 1 60 units"), doubts().toString());
        sketch.record.set(1, sketch.line(2, amount("150"), "75"));
        assertTrue(doubts().stream().noneMatch(doubt -> doubt.startsWith("WINDOW_OFF_DIAL")), doubts().toString());
    }

    @Test
    void doubtsLinesInTheWrongOrderOrFromTheFuture() {
        sketch.happened(2, "150", "0").happened(1, "150", "0");
        sketch.prepared = sketch.night(2);
        assertEquals(List.of("OUT_OF_ORDER 1 2027-03-05"), doubts());
        sketch.prepared = sketch.night(1);
        assertEquals(List.of("IN_FUTURE 0 2027-03-06", "OUT_OF_ORDER 1 2027-03-05"), doubts());
    }

    @Test
    void doubtsTwoLinesForOneInjection() {
        sketch.happened(1, "150", "0").happened(1, "150", "0");
        assertEquals(List.of("TWICE 1 2027-03-05, injection 1"), doubts());
    }

    @Test
    void doubtsAnInjectionNobodyOrdered() {
        sketch.happened(1, "150", "0");
        sketch.record.add(line(1, 2, amount("150"), Optional.empty()));
        assertEquals(List.of("OFF_COURSE 1 2027-03-05, injection 2"), doubts());
        assertEquals(PlanSketch.units("300"), night(1).given().orElseThrow());
    }

    /** Twice 900 are twelve evenings of 150, twice 1,035 are thirteen. */
    @Test
    void saysHowFarTheContainersReach() {
        Covered covered = ledger().covered();
        assertEquals(Optional.of(sketch.night(12)), covered.surelyUntil());
        assertEquals(Optional.of(sketch.night(13)), covered.possiblyUntil());
        assertEquals(Optional.of(sketch.night(13)), covered.firstShort());
        assertEquals(PlanSketch.units("150"), covered.shortAtMost());
        sketch.home("900");
        assertEquals(Optional.of(sketch.night(13)), ledger().covered().surelyUntil());
        assertEquals(Optional.empty(), ledger().covered().firstShort());
        assertEquals(PlanSketch.units("0"), ledger().covered().shortAtMost());
        sketch.stock.clear();
        assertEquals(Optional.empty(), ledger().covered().surelyUntil());
        assertEquals(Optional.empty(), ledger().covered().possiblyUntil());
        assertEquals(PlanSketch.units("1950"), ledger().covered().shortAtMost());
    }

    @Test
    void needsWhatIsStillToBeDrawn() {
        sketch.happened(1, "150", "0");
        assertEquals(PlanSketch.units("1800"), ledger().stillNeeded());
    }

    /** A box that was thrown away keeps its number, a size that is not sold is left out, and what was used is gone. */
    @Test
    void numbersTheBoxesAtHome() {
        sketch.stock.clear();
        sketch.stock.add(stock("900", 2, Optional.empty(), Optional.empty()));
        sketch.stock.add(stock("900", 1, Optional.empty(), Optional.of(LocalDate.of(2027, 3, 4))));
        sketch.stock.add(stock("450", 1, Optional.empty(), Optional.empty()));
        sketch.stock.add(stock("900", 1, Optional.of("100"), Optional.empty()));
        sketch.stock.add(stock("900", 1, Optional.of("950"), Optional.empty()));
        assertEquals(
                List.of("1 of 0: 900 to 1035", "2 of 0: 900 to 1035", "4 of 3: 800 to 935", "5 of 4: 0 to 85"),
                Container.of(sketch.medicine(), sketch.stock).stream()
                        .map(box -> box.number() + " of " + box.stock() + ": "
                                + box.least().number() + " to " + box.most().number())
                        .toList());
    }

    private static Plan.Stock stock(String size, int count, Optional<String> used, Optional<LocalDate> discarded) {
        return new Plan.Stock(
                PlanSketch.units(size),
                count,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                used.map(PlanSketch::units),
                Optional.empty(),
                discarded,
                discarded.map(day -> "broken"));
    }
}

package cyclepacket.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cyclepacket.PlanSketch;
import cyclepacket.course.Course;
import cyclepacket.plan.Device;
import cyclepacket.plan.RecordLine;
import cyclepacket.plan.RecordLine.Given;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What numbers that were read say of the containers. The pen is dialled to 175 an evening in steps of 25, and a cartridge
 * of 600 gives 600 to 750 unless a test says otherwise: after three evenings 525 are drawn, after four 700.
 */
class ReadingsTest {
    private final PlanSketch sketch =
            new PlanSketch().size("600", "600", "750").home("600", "600").dose(1, "175");

    private MedicineLedger ledger() {
        return CycleLedger.of(sketch.files(), Course.of(sketch.files()))
                .of(PlanSketch.PEN)
                .orElseThrow();
    }

    /** Evenings from {@code first} to {@code last} on which everything was given and the window went to zero. */
    private void ran(int first, int last) {
        IntStream.rangeClosed(first, last).forEach(night -> sketch.happened(night, "175", "0"));
    }

    /** Evenings on which everything was given and nobody wrote a number. */
    private void unread(int first, int last) {
        IntStream.rangeClosed(first, last).forEach(night -> sketch.happened(night, "175"));
    }

    private void unconfirmed(int night, String given, String window) {
        sketch.happened(night, given, window);
        last(false, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** The last line of the record with more on it. */
    private void last(boolean readBack, Optional<String> lost, Optional<String> reason, Optional<Integer> loaded) {
        int at = sketch.record.size() - 1;
        RecordLine line = sketch.record.get(at);
        sketch.record.set(
                at,
                new RecordLine(
                        line.date(),
                        line.medicine(),
                        1,
                        Optional.empty(),
                        line.given(),
                        line.windows(),
                        line.plunger(),
                        readBack,
                        lost.map(PlanSketch::units),
                        false,
                        reason,
                        reason,
                        Optional.empty(),
                        Optional.empty(),
                        loaded));
    }

    private void loses(String amount) {
        last(true, Optional.of(amount), Optional.empty(), Optional.empty());
    }

    private void explained() {
        last(true, Optional.empty(), Optional.of("invented"), Optional.empty());
    }

    private String owed(int night) {
        Owed owed = ledger().day(sketch.night(night))
                .orElseThrow()
                .changes()
                .get(0)
                .owed()
                .orElseThrow();
        return (owed.isAboveZero() ? "above " : "") + owed.least().number() + " to "
                + owed.most().number();
    }

    private String total(int box) {
        ContainerLine line = ledger().containers().get(box - 1);
        return line.leastTotal().number() + " to " + line.mostTotal().number();
    }

    private List<String> doubts() {
        return ledger().doubts().stream()
                .map(doubt -> doubt.kind() + ": " + doubt.subject())
                .toList();
    }

    /** The fill of a container may miss its size by one step of the dial; then the reading stands as it was read. */
    @ParameterizedTest
    @CsvSource({"4, 125, 575 to 575", "4, 100, 600 to 600", "5, 125, 750 to 750", "5, 100, 775 to 775"})
    void takesAFillWithinOneStepOfTheSize(int night, String window, String total) {
        ran(1, night - 1);
        sketch.happened(night, "175", window);
        assertEquals(total, total(1));
        assertEquals(List.of(), doubts());
    }

    @ParameterizedTest
    @CsvSource({
        "4, 150, container 1 gave 550 units",
        "4, 126, container 1 gave 574 units",
        "5, 75, container 1 gave 800 units",
        "5, 99, container 1 gave 776 units"
    })
    void refusesAFillFurtherOff(int night, String window, String text) {
        ran(1, night - 1);
        sketch.happened(night, "175", window);
        assertEquals(
                List.of("FILL_IMPOSSIBLE: " + text + ", and one labelled 600 units gives 600 to 750 units"), doubts());
    }

    /** After an exact 600 the second one gave 575 of 600 to 750, and before it 550. */
    @Test
    void measuresAFillFromTheContainerBefore() {
        ran(1, 3);
        sketch.happened(4, "175", "100");
        ran(5, 6);
        // Six evenings are 1,050; the seventh stops at 1,225 less what the window shows.
        sketch.happened(7, "175", "50");
        assertEquals(List.of(), doubts());
        assertEquals("1175 to 1175", total(2));
        sketch.record.remove(6);
        sketch.happened(7, "175", "75");
        assertEquals(
                List.of(
                        "FILL_IMPOSSIBLE: container 2 gave 550 units, and one labelled 600 units gives 600 to 750 units"),
                doubts());
    }

    /** Without a read-back it is only known that it ended in that setting; with the rest given, before its end. */
    @Test
    void keepsTheWholeSettingForANumberNobodyReadBack() {
        ran(1, 3);
        unconfirmed(4, "175", "100");
        assertEquals("600 to 699.999", total(1));
        assertEquals(List.of("NOT_CONFIRMED: 100 units"), doubts());
        sketch.record.remove(3);
        unconfirmed(4, "75", "100");
        assertEquals("600 to 600", total(1));
    }

    @Test
    void namesTheRangeOfAFillNobodyReadBack() {
        ran(1, 1);
        unconfirmed(2, "175", "100");
        assertEquals(
                List.of(
                        "NOT_CONFIRMED: 100 units",
                        "FILL_IMPOSSIBLE: container 1 gave 175 to 349.999 units, and one labelled 600 units gives 600 to"
                                + " 750 units"),
                doubts());
    }

    /** The rest of that setting came out of the next one, which holds at most 50. */
    @Test
    void letsTheNextContainerHoldTheRest() {
        sketch.size("50", "50", "50");
        sketch.stock.clear();
        sketch.home("600", "50");
        ran(1, 3);
        unconfirmed(4, "175", "100");
        assertEquals("650 to 699.999", total(1));
    }

    /** The second ended at 1,300 after it gave 600 to 750, so the first had given 550 to 700, and at least 600. */
    @Test
    void tightensTheContainerBeforeFromAReading() {
        unread(1, 7);
        sketch.happened(8, "175", "100");
        assertEquals("600 to 700", total(1));
        assertEquals("1300 to 1300", total(2));
        assertEquals(List.of(), doubts());
    }

    /**
     * At 1,525 the second gave at least 775: one step more than its size, and taken as read. With no more than 750 of it
     * the first had given 775, so that its 750 are all that is left of its range.
     */
    @Test
    void widensWhatAReadingOneStepOutsideTightens() {
        unread(1, 8);
        sketch.happened(9, "175", "50");
        assertEquals("750 to 750", total(1));
        assertEquals("1525 to 1525", total(2));
        assertEquals(List.of(), doubts());
    }

    @Test
    void asksWhichContainerANumberBelongsTo() {
        sketch.sizes.clear();
        sketch.size("600", "300", "900");
        unread(1, 4);
        sketch.happened(5, "175", "100");
        assertEquals(List.of("READING_UNCLEAR: container 1 or 2 on 2027-03-09"), doubts());
    }

    @Test
    void doubtsAContainerUsedPastItsDays() {
        sketch.openedDays = 3;
        ran(1, 3);
        sketch.happened(4, "175", "100");
        assertEquals(List.of("PAST_IN_USE: container 1 on 2027-03-08"), doubts());
        assertEquals("600 to 600", total(1));
        sketch.openedDays = 4;
        assertEquals(List.of(), doubts());
    }

    @Test
    void doubtsMoreEndsThanContainers() {
        sketch.stock.clear();
        sketch.home("600");
        ran(1, 3);
        sketch.happened(4, "75", "100").happened(5, "75", "100");
        assertEquals(List.of("NO_CONTAINER_LEFT: 2027-03-09"), doubts());
    }

    /** 825 drawn without an end are more than 750; exactly 750 are not. */
    @Test
    void asksForTheEndThatNobodyWrote() {
        ran(1, 4);
        sketch.happened(5, "175", "0");
        assertEquals(List.of("NO_END_WRITTEN: 875 units"), doubts());
        assertEquals("875 to 875", total(1));
        sketch.doses.clear();
        sketch.dose(1, "150");
        sketch.record.clear();
        IntStream.rangeClosed(1, 5).forEach(night -> sketch.happened(night, "150", "0"));
        assertEquals(List.of(), doubts());
        assertEquals("750 to 750", total(1));
    }

    /** With no other container at home a whole setting that was given proves that the last one had not ended. */
    @Test
    void takesWholeSettingsAsProofForTheLastContainer() {
        unread(1, 4);
        assertEquals("600 to 750", total(1));
        sketch.stock.clear();
        sketch.home("600");
        assertEquals("700 to 750", total(1));
        sketch.record.remove(3);
        sketch.happened(4, "75");
        assertEquals("600 to 750", total(1));
    }

    /** A setting that nobody knows may not have been drawn: 750, those 175 and one step of 25 are 950. */
    @Test
    void letsAnUnknownSettingCountForNothing() {
        sketch.happened(1, new Given.Unknown());
        ran(2, 5);
        sketch.happened(6, "175", "100");
        assertEquals(List.of(), doubts());
        assertEquals("950 to 950", total(1));
        sketch.record.remove(5);
        sketch.happened(6, "175", "99");
        assertEquals(
                List.of(
                        "FILL_IMPOSSIBLE: container 1 gave 951 units, and one labelled 600 units gives 600 to 750 units"),
                doubts());
    }

    @Test
    void readsTwoStopsOfOneSetting() {
        sketch.size("100", "100", "125");
        sketch.stock.clear();
        sketch.home("600", "100", "600");
        ran(1, 3);
        sketch.happened(4, "175", "100", "25");
        assertEquals("600 to 600", total(1));
        assertEquals("675 to 675", total(2));
        assertEquals(
                List.of("[100 at 600]", "[25 at 675]", "[]"),
                ledger().containers().stream()
                        .map(box -> box.read().stream()
                                .map(stop -> stop.window().number() + " at "
                                        + stop.total().number())
                                .toList()
                                .toString())
                        .toList());
        assertEquals(3, ledger().inUse().orElseThrow().container().number());
        assertEquals(3, ledger().coming().orElseThrow().container().number());
    }

    /** At 1,175 the second gave 575 at the most: one step too little, with 600 of the first. */
    @Test
    void widensWhatAReadingOneStepBelowTightens() {
        unread(1, 6);
        sketch.happened(7, "175", "50");
        assertEquals("600 to 600", total(1));
        assertEquals("1175 to 1175", total(2));
        assertEquals(List.of(), doubts());
    }

    /** Two ended unseen before the third stopped at 2,000: the second by 1,400, the first by 750. */
    @Test
    void passesANumberOnToTheThirdContainer() {
        sketch.home("600");
        unread(1, 11);
        sketch.happened(12, "175", "100");
        assertEquals("600 to 750", total(1));
        assertEquals("1250 to 1400", total(2));
        assertEquals("2000 to 2000", total(3));
        assertEquals(List.of(), doubts());
    }

    /** The first setting may not have been drawn: 600 to 750 and those 175, less what a reading of 1,300 leaves. */
    @Test
    void tightensOverAnUnknownSetting() {
        sketch.happened(1, new Given.Unknown());
        unread(2, 7);
        sketch.happened(8, "175", "100");
        assertEquals("600 to 700", total(1));
        assertEquals("1300 to 1300", total(2));
    }

    /** Eleven evenings of 100 out of 175 are 1,100: no single box holds that, and there is no other. */
    @Test
    void refusesAFillOfTheOnlyContainer() {
        sketch.stock.clear();
        sketch.home("600");
        IntStream.rangeClosed(1, 11).forEach(night -> sketch.happened(night, "100"));
        sketch.happened(12, "75", "100");
        assertEquals(
                List.of(
                        "FILL_IMPOSSIBLE: container 1 gave 1175 units, and one labelled 600 units gives 600 to 750 units"),
                doubts());
    }

    /** Of the last one 700 were drawn before it stopped, read back or not. */
    @Test
    void startsAnUnconfirmedEndAtWhatWasDrawn() {
        sketch.stock.clear();
        sketch.home("600");
        unread(1, 4);
        unconfirmed(5, "75", "100");
        assertEquals("700 to 750", total(1));
    }

    /** What nobody knows of the setting in which it stopped was not in the old one. */
    @Test
    void addsNothingOfTheSettingItStoppedIn() {
        ran(1, 4);
        sketch.happened(5, "175", "75");
        sketch.record.set(4, sketch.line(5, new Given.Unknown(), "75"));
        assertEquals(
                List.of(
                        "FILL_IMPOSSIBLE: container 1 gave 800 units, and one labelled 600 units gives 600 to 750 units"),
                doubts());
    }

    /** 600 exactly, then 600 to 750 of the second and the 175 that it may not have given. */
    @Test
    void widensOnlyTheContainersAfterAnUnknownSetting() {
        ran(1, 3);
        sketch.happened(4, "175", "100").happened(5, new Given.Unknown());
        assertEquals("600 to 600", total(1));
        assertEquals("1200 to 1525", total(2));
        sketch.record.remove(4);
        sketch.record.set(3, sketch.line(4, new Given.Unknown(), "100"));
        assertEquals("600 to 600", total(1));
        assertEquals("1200 to 1450", total(2));
    }

    @Test
    void keepsAnUnconfirmedEndPastItsDays() {
        sketch.openedDays = 3;
        ran(1, 3);
        unconfirmed(4, "175", "100");
        assertEquals("600 to 699.999", total(1));
        assertEquals(List.of("NOT_CONFIRMED: 100 units", "PAST_IN_USE: container 1 on 2027-03-08"), doubts());
    }

    /** A whole 750 came out without an end: the next injection cannot have come out of it too. */
    @Test
    void asksForTheEndAfterTheLastDrop() {
        sketch.doses.clear();
        sketch.dose(1, "150");
        IntStream.rangeClosed(1, 6).forEach(night -> sketch.happened(night, "150", "0"));
        assertEquals(List.of("NO_END_WRITTEN: 900 units"), doubts());
    }

    @Test
    void asksForAnEndInTheFirstSetting() {
        sketch.sizes.clear();
        sketch.size("600", "300", "400");
        sketch.doses.clear();
        sketch.dose(1, "450");
        sketch.happened(1, "450", "0");
        assertEquals(List.of("NO_END_WRITTEN: 450 units"), doubts());
    }

    /** 125 given and 50 lost with the window at zero: the setting ran through, so 700 came out of the last one. */
    @Test
    void takesAZeroAsProofWhereSomeWasLost() {
        sketch.stock.clear();
        sketch.home("600");
        ran(1, 3);
        sketch.happened(4, "125", "0");
        loses("50");
        assertEquals("700 to 750", total(1));
        assertEquals(List.of(), doubts());
    }

    @Test
    void keepsTheReasonOfALineThatLooksImpossible() {
        ran(1, 2);
        sketch.happened(3, "175", "150");
        assertEquals(false, ledger().doubts().get(0).isExplained());
        explained();
        assertEquals(true, ledger().doubts().get(0).isExplained());
    }

    /** No reason can say which box was meant. */
    @Test
    void takesNoReasonForANumberOfTwoContainers() {
        sketch.sizes.clear();
        sketch.size("600", "300", "900");
        unread(1, 4);
        sketch.happened(5, "175", "100");
        explained();
        assertEquals(RecordDoubt.Kind.READING_UNCLEAR, ledger().doubts().get(0).kind());
        assertEquals(false, ledger().doubts().get(0).isExplained());
    }

    /** The number that was read is what is owed, whether or not the rest was given or something was lost. */
    @Test
    void owesTheNumberThatWasRead() {
        ran(1, 3);
        sketch.happened(4, "75", "100");
        assertEquals("100 to 100", owed(4));
        sketch.record.set(3, sketch.line(4, new Given.Amount(PlanSketch.units("175")), "100"));
        loses("50");
        assertEquals("100 to 100", owed(4));
    }

    /** 50 lost in the setting that may have ended it left the old one or the new one: up to 750 or from 600 on. */
    @Test
    void owesMoreOrLessWhereSomeWasLost() {
        ran(1, 3);
        sketch.happened(4, "175");
        loses("50");
        assertEquals("above 0 to 150", owed(4));
    }

    private void loads(int night, int box, boolean isExplained) {
        Optional<String> said = Optional.of("invented").filter(word -> isExplained);
        sketch.record.add(new RecordLine(
                sketch.night(night),
                PlanSketch.PEN,
                1,
                Optional.empty(),
                new Given.NotWritten(),
                List.of(),
                Optional.empty(),
                false,
                Optional.empty(),
                false,
                said,
                said,
                Optional.empty(),
                Optional.empty(),
                Optional.of(box)));
    }

    /** A new one was loaded before the fifth evening, after 700: the old one gave that and no more. */
    @Test
    void endsAContainerWhereTheNextWasLoaded() {
        ran(1, 4);
        loads(5, 2, false);
        assertEquals("700 to 700", total(1));
        assertEquals(List.of(), doubts());
        sketch.happened(5, "175", "0");
        assertEquals("700 to 700", total(1));
    }

    /** Loaded on the fifth evening, which was missed; the sixth is the first that comes out of it. */
    @Test
    void remembersWhatWasLoadedOnAnEveningThatWasMissed() {
        ran(1, 4);
        loads(5, 2, false);
        sketch.happened(5, new RecordLine.Given.Missed());
        sketch.happened(6, "175", "0");
        assertEquals("700 to 700", total(1));
        assertEquals(List.of(), doubts());
    }

    /**
     * Nobody wrote where the first one ended. The second stopped at 1,525, a step more than two can give: 8 x 175 are 1,400,
     * and 125 of the ninth. So both gave the most they can, give or take that step: the first ended at 750.
     */
    @Test
    void looksBackFromANumberAStepOutside() {
        sketch.home("600");
        unread(1, 8);
        sketch.happened(9, "175", "50");
        assertEquals("750 to 750", total(1));
        assertEquals("1525 to 1525", total(2));
    }

    /** Cartridges of exactly 600, 150 an evening: what is unknown of the fourth moves each end by 150, and by no more. */
    @Test
    void countsWhatIsUnknownOnce() {
        sketch.sizes.clear();
        sketch.doses.clear();
        sketch.size("600", "600", "600").home("600").dose(1, "150");
        IntStream.rangeClosed(1, 3).forEach(night -> sketch.happened(night, "150", "0"));
        sketch.happened(4, new RecordLine.Given.Unknown());
        assertEquals("600 to 750", total(1));
        assertEquals("1200 to 1350", total(2));
    }

    /** The line of the injection itself says that the second one was loaded for it. */
    @Test
    void endsAContainerInTheLineThatLoadsTheNext() {
        ran(1, 4);
        sketch.happened(5, "175", "0");
        last(true, Optional.empty(), Optional.empty(), Optional.of(2));
        assertEquals("700 to 700", total(1));
        assertEquals(List.of(), doubts());
    }

    /** The second box before anything was drawn: the first would have given nothing. */
    @Test
    void doubtsThatTheSecondBoxWasLoadedFirst() {
        loads(1, 2, false);
        sketch.prepared = sketch.night(1);
        assertEquals(
                List.of("FILL_IMPOSSIBLE: container 1 gave 0 units, and one labelled 600 units gives 600 to 750 units"),
                doubts());
    }

    @Test
    void endsNothingWhereTheFirstBoxIsLoaded() {
        loads(1, 1, false);
        ran(1, 4);
        assertEquals("700 to 750", total(1));
        assertEquals(List.of(), doubts());
    }

    /** After two evenings 350 are drawn: too little for a box that ran dry, but not for one that was put away. */
    @Test
    void asksWhyAFullBoxWasLeft() {
        ran(1, 2);
        loads(3, 2, false);
        assertEquals(1, doubts().size());
        sketch.record.remove(2);
        loads(3, 2, true);
        assertEquals(List.of(), doubts());
        assertEquals("350 to 350", total(1));
    }

    private List<String> lookUp() {
        return ledger().lookUp().stream()
                .map(row -> sketch.start.until(row.date()).getDays() + 1 + ": "
                        + row.window().number() + " then "
                        + row.next()
                                .map(next -> next.leaving() + " on "
                                        + (sketch.start.until(next.earliest()).getDays() + 1) + " to "
                                        + next.latest()
                                                .map(latest -> ""
                                                        + (sketch.start
                                                                        .until(latest)
                                                                        .getDays()
                                                                + 1))
                                                .orElse("open"))
                                .orElse(row.hasNextContainer() ? "no end" : "no box"))
                .toList();
    }

    /**
     * At 250 an evening the first, of 600, ends on the third with 150 owed; the second then ends at 1,200 to 1,350: on the
     * fifth (1,250) or the sixth (1,500).
     */
    @Test
    void looksUpTheEndAfterTheComingOne() {
        sketch.sizes.clear();
        sketch.size("600", "600", "600").size("650", "600", "750");
        sketch.stock.clear();
        sketch.home("600", "650");
        sketch.doses.clear();
        sketch.dose(1, "250");
        assertEquals(List.of("3: 150 then 2 on 5 to 6"), lookUp());
        sketch.days = 5;
        assertEquals(List.of("3: 150 then 2 on 5 to open"), lookUp());
        sketch.days = 4;
        assertEquals(List.of("3: 150 then no end"), lookUp());
        sketch.stock.remove(1);
        assertEquals(List.of("3: 150 then no box"), lookUp());
    }

    /**
     * 675 to 725 end on the fourth with 25 at the most or on the fifth with 150 to 175. After 675 the second ends at 1,350
     * to 1,400, after 725 at 1,400 at the least: that is the last evening of the course, given whole.
     */
    @Test
    void looksUpEveryMarkOfEveryEvening() {
        sketch.sizes.clear();
        sketch.size("600", "675", "725");
        sketch.days = 8;
        assertEquals(
                List.of("4: 25 then 2 on 8 to open", "5: 150 then no end", "5: 175 then 2 on 8 to open"), lookUp());
    }

    /** It may have ended on the fourth evening, when nobody looked; what is looked up is still to come. */
    @Test
    void looksUpOnlyEveningsToCome() {
        unread(1, 4);
        assertEquals(
                List.of("5", "5", "5"),
                lookUp().stream().map(row -> row.substring(0, 1)).toList());
        assertEquals("5: 125", lookUp().get(0).substring(0, 6));
    }

    /** 600 of the first were read; the second ends at 1,200 with 25 on the seventh, and the third at 1,800 to 1,950. */
    @Test
    void looksUpFromTheEndThatWasRead() {
        sketch.home("600");
        ran(1, 3);
        sketch.happened(4, "175", "100");
        assertEquals("7: 25 then 3 on 11 to 12", lookUp().get(0));
    }

    /** The second was loaded at 700 for tonight: it ends at 1,300 to 1,450, on the eighth (1,400) or the ninth evening. */
    @Test
    void looksUpTheEndOfTheBoxThatWasLoaded() {
        ran(1, 4);
        loads(5, 2, false);
        assertEquals(
                List.of("8: 25", "8: 50", "8: 75", "8: 100", "9: 125", "9: 150", "9: 175"),
                lookUp().stream().map(row -> row.replace(" then no box", "")).toList());
    }

    @Test
    void looksNothingUpOnceTheEndWasRead() {
        sketch.stock.remove(1);
        ran(1, 3);
        sketch.happened(4, "75", "100");
        assertEquals(List.of(), lookUp());
    }

    /** A pen that shows what is left: 300 holds one dose of 225 and stops at 75, and the new one gives 150. */
    @Test
    void looksUpWhatIsLeft() {
        sketch.window = Device.Window.LEFT;
        sketch.sizes.clear();
        sketch.size("300", "300", "310");
        sketch.stock.clear();
        sketch.home("300", "300");
        sketch.doses.clear();
        sketch.dose(1, "225");
        assertEquals(List.of("2: 75 then 2 on 3 to 3"), lookUp());
    }
}

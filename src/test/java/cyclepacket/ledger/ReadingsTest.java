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
        RecordLine line = sketch.line(night, new Given.Amount(PlanSketch.units(given)), window);
        sketch.happened(night, given, window);
        sketch.record.set(
                sketch.record.size() - 1,
                new RecordLine(
                        line.date(),
                        line.medicine(),
                        1,
                        Optional.empty(),
                        line.given(),
                        line.windows(),
                        line.plunger(),
                        false,
                        Optional.empty(),
                        false,
                        Optional.empty(),
                        Optional.empty()));
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

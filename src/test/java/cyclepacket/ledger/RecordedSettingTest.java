package cyclepacket.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.PlanSketch;
import cyclepacket.plan.Device.Window;
import cyclepacket.plan.RecordLine;
import cyclepacket.plan.RecordLine.Given;
import cyclepacket.plan.RecordLine.Plunger;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseUnit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What one line of the record proves, on both kinds of pen; 187.5 is ordered unless a test says otherwise. */
class RecordedSettingTest {
    private static final Dose ORDERED = units("187.5");

    private Window pen = Window.OWED;
    private Optional<Dose> dialled = Optional.empty();
    private Optional<Plunger> plunger = Optional.of(Plunger.END);
    private Optional<Dose> lost = Optional.empty();
    private Optional<Dose> ordered = Optional.of(ORDERED);
    private final List<String> doubts = new ArrayList<>();

    private static Dose units(String amount) {
        return PlanSketch.units(amount);
    }

    private static Given all(String amount) {
        return new Given.Amount(units(amount));
    }

    private RecordedSetting read(Given given, String... windows) {
        doubts.clear();
        RecordLine line = new RecordLine(
                LocalDate.of(2027, 3, 8),
                PlanSketch.PEN,
                1,
                dialled,
                given,
                Arrays.stream(windows).map(PlanSketch::units).toList(),
                plunger,
                true,
                lost,
                false,
                Optional.empty(),
                Optional.empty());
        return RecordedSetting.of(
                line, ordered, pen, DoseUnit.UNITS, (kind, subject) -> doubts.add(kind + " " + subject));
    }

    private String stops(RecordedSetting setting) {
        return setting.stops(units("1000"), pen, true).stream()
                .map(stop -> stop.window().number() + " at " + stop.total().number())
                .collect(Collectors.joining(", "));
    }

    @Test
    void takesAZeroAsProofThatNothingEnded() {
        RecordedSetting setting = read(all("187.5"), "0");
        assertTrue(setting.provesNoEnd());
        assertEquals(ORDERED, setting.drawn());
        assertEquals("", stops(setting));
        assertEquals(Optional.of(ORDERED), read(new Given.NotWritten(), "0").given());
        assertEquals(List.of(), doubts);
    }

    @Test
    void takesNoNumberAsNoProof() {
        RecordedSetting setting = read(all("187.5"));
        assertFalse(setting.provesNoEnd());
        assertEquals(ORDERED, setting.drawn());
        assertTrue(setting.unknown().isZero());
        plunger = Optional.of(Plunger.NOT_END);
        assertFalse(read(all("187.5"), "0").provesNoEnd());
    }

    /** Stopped at 87.5 of 187.5: 100 came out of the old one, whether or not the rest was given. */
    @Test
    void findsWhatTheOldContainerGave() {
        RecordedSetting stoppedThere = read(all("100"), "87.5");
        assertEquals(units("100"), stoppedThere.drawn());
        assertEquals("87.5 at 1100", stops(stoppedThere));
        assertFalse(stoppedThere.provesNoEnd());
        RecordedSetting wentOn = read(all("187.5"), "87.5");
        assertEquals(ORDERED, wentOn.drawn());
        assertEquals("87.5 at 1100", stops(wentOn));
        assertEquals(List.of(), doubts);
    }

    @Test
    void findsTwoStopsInOneSetting() {
        RecordedSetting setting = read(all("137.5"), "150", "50");
        assertEquals("150 at 1037.5, 50 at 1137.5", stops(setting));
        assertEquals(units("137.5"), setting.drawn());
        assertEquals(List.of(), doubts);
        read(all("187.5"), "50", "150");
        assertEquals(List.of("WINDOW_ABOVE_DIALLED 150 units of 50 units"), doubts);
    }

    @Test
    void asksForWhatWasGiven() {
        assertEquals(ORDERED, read(new Given.NotWritten(), "87.5").drawn());
        assertEquals(List.of("WINDOW_WITHOUT_GIVEN 187.5 units"), doubts);
        assertEquals(Optional.of(ORDERED), read(new Given.NotWritten()).given());
        assertEquals(List.of("SAYS_NOTHING 187.5 units"), doubts);
    }

    @Test
    void doubtsAmountsThatCannotBe() {
        read(all("200"), "0");
        assertEquals(List.of("GIVEN_ABOVE_DIALLED 200 units of 187.5 units"), doubts);
        assertEquals(units("100"), read(all("50"), "87.5").drawn());
        assertEquals(List.of("GIVEN_BELOW_OLD 50 units where 100 units came out"), doubts);
        assertEquals(ORDERED, read(all("100"), "0").drawn());
        assertEquals(List.of("GIVEN_BELOW_OLD 100 units where 187.5 units came out"), doubts);
        read(all("187.5"), "200");
        assertEquals(List.of("WINDOW_ABOVE_DIALLED 200 units of 187.5 units"), doubts);
    }

    /** What was lost left the container too: 100 given and 87.5 lost are the whole setting. */
    @Test
    void countsALossAsDrawn() {
        lost = Optional.of(units("87.5"));
        assertEquals(ORDERED, read(all("100"), "0").drawn());
        assertEquals(List.of(), doubts);
        assertEquals(units("275"), read(all("187.5")).drawn());
        read(all("187.5"), "50");
        assertEquals(List.of("LOSS_WITH_STOP 87.5 units"), doubts);
    }

    /** The whole setting left over is an empty container only if the plunger stood at the end. */
    @Test
    void looksAtThePlungerBeforeItBelievesInAnEnd() {
        assertEquals("187.5 at 1000", stops(read(all("187.5"), "187.5")));
        assertEquals(List.of(), doubts);
        plunger = Optional.empty();
        read(all("187.5"), "187.5");
        assertEquals(List.of("PLUNGER_NOT_SEEN 187.5 units"), doubts);
        read(all("187.5"), "87.5");
        assertEquals(List.of(), doubts);
        plunger = Optional.of(Plunger.NOT_END);
        assertEquals("", stops(read(all("187.5"), "187.5")));
    }

    @Test
    void countsAWholeSettingThatNobodyKnows() {
        RecordedSetting setting = read(new Given.Unknown());
        assertEquals(ORDERED, setting.drawn());
        assertEquals(ORDERED, setting.unknown());
        assertEquals(Optional.empty(), setting.given());
        assertEquals(units("87.5"), read(new Given.Unknown(), "87.5").unknown());
        assertFalse(read(new Given.Unknown(), "0").provesNoEnd());
        lost = Optional.of(units("12.5"));
        assertEquals(units("200"), read(new Given.Unknown()).drawn());
    }

    @Test
    void takesTheNumberDialledBeforeTheOrder() {
        assertEquals(ORDERED, read(all("100")).dialled());
        dialled = Optional.of(units("200"));
        assertEquals(units("200"), read(all("100")).dialled());
        dialled = Optional.empty();
        ordered = Optional.empty();
        assertEquals(units("100"), read(all("100")).dialled());
        assertEquals(units("0"), read(new Given.NotWritten()).dialled());
    }

    /** 225 with 62.5 left: the pen stops dialling at 62.5, gives that, and the new one gives 162.5. */
    @Test
    void readsWhatIsLeftOnTheOtherPen() {
        pen = Window.LEFT;
        ordered = Optional.of(units("225"));
        RecordedSetting setting = read(all("225"), "62.5");
        assertEquals("62.5 at 1062.5", stops(setting));
        assertEquals(units("225"), setting.drawn());
        assertEquals("62.5 at 1062.5, 50 at 1112.5", stops(read(all("225"), "62.5", "50")));
        assertEquals(List.of(), doubts);
        read(all("100"), "62.5", "50");
        assertEquals(List.of("GIVEN_BELOW_OLD 100 units where 112.5 units came out"), doubts);
    }

    @Test
    void endsTheOtherPenAtAZero() {
        pen = Window.LEFT;
        assertEquals("0 at 1000", stops(read(all("187.5"), "0")));
        assertFalse(read(all("187.5"), "0").provesNoEnd());
        assertFalse(read(all("187.5")).provesNoEnd());
        dialled = Optional.of(ORDERED);
        assertTrue(read(all("187.5")).provesNoEnd());
        assertFalse(read(all("187.5"), "62.5").provesNoEnd());
    }

    /** Where the whole setting could be dialled, the pen did not stop. */
    @Test
    void doubtsAStopOfTheOtherPenAtTheWholeSetting() {
        pen = Window.LEFT;
        read(all("187.5"), "187.5");
        assertEquals(List.of("WINDOW_ABOVE_DIALLED 187.5 units of 187.5 units"), doubts);
        read(all("187.5"), "87.5", "100");
        assertEquals(List.of("WINDOW_ABOVE_DIALLED 100 units of 100 units"), doubts);
    }

    /** On that pen the whole line is no proof of what came out, so less given is no contradiction. */
    @Test
    void believesASmallerAmountOnTheOtherPen() {
        pen = Window.LEFT;
        dialled = Optional.of(ORDERED);
        assertEquals(units("100"), read(all("100")).drawn());
        assertEquals(List.of(), doubts);
    }
}

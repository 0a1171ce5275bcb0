package cyclepacket.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import cyclepacket.PlanSketch;
import cyclepacket.course.Course;
import cyclepacket.plan.Revision;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Ledgers of syringes, powder vials and tablets on the files of the demo, and evenings that an order holds back. */
class OtherFormsLedgerTest {
    private static final LocalDate TENTH = LocalDate.of(2027, 3, 10);

    private static MedicineLedger of(LaidOut plan, String medicine) throws IOException {
        return plan.ledger().of(medicine).orElseThrow();
    }

    private static LaidOut third() throws IOException {
        return LaidOut.demo("SM-04417-issue-3");
    }

    private static String drawn(MedicineLedger ledger) {
        return ledger.draws().stream()
                .map(draw -> draw.date().getDayOfMonth() + ": " + draw.after().number())
                .collect(Collectors.joining(", "));
    }

    private static List<String> doubts(MedicineLedger ledger) {
        return ledger.doubts().stream()
                .map(doubt -> doubt.kind() + " " + doubt.subject())
                .toList();
    }

    /** Five syringes of 0.25; two were given, one is due on the evening before the trigger. */
    @Test
    void usesUpSyringesDoseByDose() throws IOException {
        MedicineLedger ledger = of(third(), "antagonist-syringe");
        assertEquals("10: 0.25, 11: 0.5, 12: 0.75", drawn(ledger));
        assertEquals(5, ledger.containers().size());
        assertEquals("0.5 mg", ledger.containers().get(1).leastTotal().toString());
        assertEquals("1.25 mg", ledger.containers().get(4).mostTotal().toString());
        assertEquals(List.of(), ledger.changes());
        assertEquals(3, ledger.days().size());
        assertEquals(
                Evening.State.GIVEN, ledger.day(TENTH).orElseThrow().evening().state());
        assertEquals(Optional.empty(), ledger.covered().firstShort());
        assertEquals(List.of(), doubts(ledger));
    }

    /** A syringe that was begun is used up, however little of it reached the patient. */
    @Test
    void countsABegunSyringeWhole() throws IOException {
        LaidOut plan = third().with(
                        "patients/SM-04417-issue-3.yaml",
                        "{date: 2027-03-10, medicine: antagonist-syringe, given: 0.25}",
                        "{date: 2027-03-10, medicine: antagonist-syringe, given: 0.1}");
        assertEquals("10: 0.25, 11: 0.5, 12: 0.75", drawn(of(plan, "antagonist-syringe")));
        assertEquals(
                Evening.State.PARTIAL,
                of(plan, "antagonist-syringe")
                        .day(TENTH)
                        .orElseThrow()
                        .evening()
                        .state());
        LaidOut none = third().with(
                        "patients/SM-04417-issue-3.yaml",
                        "{date: 2027-03-10, medicine: antagonist-syringe, given: 0.25}",
                        "{date: 2027-03-10, medicine: antagonist-syringe, given: 0}");
        assertEquals("10: 0, 11: 0.25, 12: 0.5", drawn(of(none, "antagonist-syringe")));
    }

    @Test
    void asksWhatASyringeGaveAndWhyItHasAWindow() throws IOException {
        String line = "{date: 2027-03-10, medicine: antagonist-syringe, given: 0.25}";
        LaidOut silent = third().with(
                        "patients/SM-04417-issue-3.yaml", line, "{date: 2027-03-10, medicine: antagonist-syringe}");
        assertEquals(List.of("SAYS_NOTHING 0.25 mg"), doubts(of(silent, "antagonist-syringe")));
        LaidOut window = third().with("patients/SM-04417-issue-3.yaml", line, line.replace("}", ", window: 0.1}"));
        assertEquals(List.of("WINDOW_OFF_DIAL 0.1 mg"), doubts(of(window, "antagonist-syringe")));
        LaidOut unknown =
                third().with("patients/SM-04417-issue-3.yaml", line, line.replace("given: 0.25", "given: unknown"));
        MedicineLedger ledger = of(unknown, "antagonist-syringe");
        assertEquals(Optional.empty(), ledger.draws().get(0).given());
        assertEquals("10: 0.25, 11: 0.5, 12: 0.75", drawn(ledger));
        assertEquals(
                Evening.State.PARTIAL, ledger.day(TENTH).orElseThrow().evening().state());
    }

    @Test
    void keepsTheRecordOfEachMedicineApart() throws IOException {
        MedicineLedger pen = of(third(), "fsh-pen");
        assertEquals(8, pen.draws().size());
        assertEquals(List.of(), doubts(pen));
        assertEquals(
                Optional.of("fsh-pen"),
                third().ledger().of(pen.medicine()).map(own -> own.medicine().id()));
    }

    /** Four vials of 75 hold the 225 of three, and part vials are mixed whole: 112.5 takes 150 out of the stock. */
    @Test
    void mixesPartVialsWhole() throws IOException {
        MedicineLedger vials = of(LaidOut.demo("DA-05120"), "menotropin-vial");
        assertEquals("150", vials.draws().get(0).after().number().toPlainString());
        assertEquals("112.5", vials.draws().get(0).dialled().number().toPlainString());
        assertEquals("300", vials.draws().get(1).after().number().toPlainString());
    }

    /**
     * Doses of 135, 180 and 90 (0.6, 0.8 and 0.4 mL, and 0.02 mL lost each time) of vials of 2 mL: three of the first; the
     * fourth and one of 0.8; twice two of 0.8, and four of 0.4.
     */
    @Test
    void endsKeptVialsWhereTheNextDoseNoLongerComesOut() throws IOException {
        String steps = "doses:\n  fsh-kept-vial:\n    - {from: S1, amount: 135, order: ORD-1}\n"
                + "    - {from: S5, amount: 180, order: ORD-1}\n    - {from: S8, amount: 90, order: ORD-1}\n"
                + "on-hand:\n  fsh-kept-vial: [{size: 450, count: 3, expires: 2028-01-31}]\n";
        MedicineLedger vials = of(LaidOut.plan("antagonist-step", "{S1: 2027-03-03}", steps), "fsh-kept-vial");
        assertEquals(
                List.of("2027-03-06 1 TOO_LITTLE_LEFT", "2027-03-08 2 TOO_LITTLE_LEFT", "2027-03-10 3 TOO_LITTLE_LEFT"),
                vials.days().stream()
                        .flatMap(day -> day.changes().stream()
                                .map(change -> day.evening().date() + " " + change.leaving() + " " + change.cause()))
                        .toList());
        assertEquals(Optional.of(LocalDate.of(2027, 3, 9)), vials.covered().surelyUntil());
        assertEquals(Optional.of(LocalDate.of(2027, 3, 10)), vials.covered().firstShort());
    }

    /** 3 mg are one tablet of 2 mg and a half; a tablet that must not be halved is used up whole. */
    @Test
    void usesUpPartTabletsAsTheyMayBeHalved() throws IOException {
        LaidOut halved = LaidOut.demo("FT-08440");
        LaidOut whole = LaidOut.demo("FT-08440-issue-2")
                .with("medicines/estradiol-tablet.yaml", "piece: tablet, halves: true", "piece: tablet, halves: false");
        assertEquals("3", taken(of(halved, "estradiol-tablet")));
        assertEquals("4", taken(of(whole, "estradiol-tablet")));
    }

    private static String taken(MedicineLedger tablets) {
        Draw draw = tablets.draws().stream()
                .filter(each -> each.dialled().number().toPlainString().equals("3"))
                .findFirst()
                .orElseThrow();
        return draw.after().minus(draw.before()).number().toPlainString();
    }

    private static PlanSketch sketch() {
        return new PlanSketch()
                .size("900", "900", "900")
                .home("900", "900", "900")
                .dose(1, "150");
    }

    private static MedicineLedger of(PlanSketch sketch) {
        return CycleLedger.of(sketch.files(), Course.of(sketch.files()))
                .of(PlanSketch.PEN)
                .orElseThrow();
    }

    @Test
    void drawsNothingOnAnEveningThatAnOrderHoldsBack() {
        PlanSketch sketch = sketch();
        sketch.revised.add(new Revision(
                2,
                Revision.What.HOLD,
                Optional.of(PlanSketch.PEN),
                Optional.of(sketch.night(3)),
                Optional.of(sketch.night(4)),
                Optional.empty(),
                Optional.of("ORD-2"),
                "a nurse (invented)",
                "the patient",
                sketch.night(2),
                true));
        MedicineLedger ledger = of(sketch);
        Evening held = ledger.day(sketch.night(3)).orElseThrow().evening();
        assertTrue(held.isHeld());
        assertEquals("S3", held.day());
        assertEquals(20, held.at().orElseThrow().getHour());
        assertEquals(Evening.State.PLANNED, held.state());
        assertFalse(ledger.day(sketch.night(5)).orElseThrow().evening().isHeld());
        assertEquals(PlanSketch.units("450"), ledger.draws().get(2).after());
        assertEquals(sketch.night(5), ledger.draws().get(2).date());
    }

    /** The visit of 12 March decides that evening and every later one; it is still to come. */
    @Test
    void waitsOnEveningsThatACallDecides() throws IOException {
        MedicineLedger pen = of(LaidOut.demo("SM-04417-issue-2"), "fsh-pen");
        Evening evening = pen.day(LocalDate.of(2027, 3, 12)).orElseThrow().evening();
        assertEquals(Evening.State.PROVISIONAL, evening.state());
        assertTrue(evening.isToCome());
    }

    @Test
    void listsTheSettingsWithoutTheirContainers() {
        PlanSketch sketch = sketch();
        assertEquals(
                of(sketch).draws(), CycleLedger.settings(sketch.files(), Course.of(sketch.files()), sketch.medicine()));
    }

    @Test
    void isNotHeldOutsideTheCourse() {
        PlanSketch sketch = sketch();
        sketch.happened(0, "150", "0");
        Evening before = of(sketch).day(sketch.night(0)).orElseThrow().evening();
        assertEquals("", before.day());
        assertEquals(Optional.empty(), before.at());
        assertFalse(before.isHeld());
        assertEquals(Evening.State.PARTIAL, before.state());
    }
}

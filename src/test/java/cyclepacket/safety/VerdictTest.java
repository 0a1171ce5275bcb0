package cyclepacket.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import java.io.IOException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Warnings against overrides, on the first issue of the demo with two warnings. */
class VerdictTest {
    private static final String CODE = "SUPPLY-SHORT";
    private static final String PLACE = "/on-hand/fsh-pen";
    private static final String REASON = "the rest arrives on Monday";
    private static final String BY = "L. Marsh (invented)";

    @Test
    void keepsWarningsOpenThatNobodyAccepted() throws IOException {
        Verdict verdict = verdict(List.of());
        assertEquals(2, verdict.open().size());
        assertEquals(List.of(), verdict.accepted());
        assertFalse(verdict.hasStop());
        assertEquals(2 + verdict.notes().size(), verdict.standing().size());
    }

    @Test
    void acceptsAWarningByCodeAndPlace() throws IOException {
        Verdict verdict = verdict(List.of(new Plan.Override(CODE, PLACE, REASON, BY)));
        assertEquals(1, verdict.open().size());
        assertEquals(1, verdict.accepted().size());
        Verdict.Accepted accepted = verdict.accepted().get(0);
        assertEquals(PLACE, accepted.finding().place().pointer());
        assertEquals(REASON, accepted.reason());
        assertEquals(BY, accepted.by());
        assertFalse(verdict.standing().contains(accepted.finding()));
        assertEquals(List.of(), unused(verdict));
    }

    @Test
    void acceptsWithTheLineThatTheMendPrints() throws IOException {
        Verdict before = verdict(List.of());
        List<Plan.Override> lines = before.open().stream()
                .map(finding -> Pattern.compile(
                                "\\{code: ([^,]+), place: ([^,]+), reason: \\.\\.\\., by: \\.\\.\\.\\}$")
                        .matcher(finding.mend()))
                .filter(Matcher::find)
                .map(line -> new Plan.Override(line.group(1), line.group(2), REASON, BY))
                .toList();
        assertEquals(2, lines.size());
        assertEquals(List.of(), verdict(lines).open());
    }

    @Test
    void acceptsNothingWithoutAReasonOrAName() throws IOException {
        assertEquals(
                2,
                verdict(List.of(new Plan.Override(CODE, PLACE, " ", BY))).open().size());
        assertEquals(
                2,
                verdict(List.of(new Plan.Override(CODE, PLACE, REASON, "")))
                        .open()
                        .size());
    }

    @Test
    void acceptsNothingAtAnotherPlaceOrOfAnotherCode() throws IOException {
        Verdict verdict = verdict(List.of(
                new Plan.Override(CODE, "/on-hand/trigger-syringe", REASON, BY),
                new Plan.Override("DAILY-HIGH", PLACE, REASON, BY)));
        assertEquals(2, verdict.open().size());
        assertEquals(List.of("/overrides/0", "/overrides/1"), unused(verdict));
    }

    /** A line that was taken over from an earlier issue stays in sight, although another line is in use. */
    @Test
    void tellsOfAnUnusedLineBesideAUsedOne() throws IOException {
        String elsewhere = "/on-hand/trigger-syringe";
        Verdict verdict = verdict(
                List.of(new Plan.Override(CODE, PLACE, REASON, BY), new Plan.Override(CODE, elsewhere, REASON, BY)));
        assertEquals(List.of("/overrides/1"), unused(verdict));
    }

    /** What was no stop must not be called one, or somebody looks for a stop that is not there. */
    @Test
    void tellsAnUnusedLineFromOneThatNamesAStop() throws IOException {
        PlanFiles files = EditedDemo.unchanged("patients/SM-04417.yaml").files();
        Finding stop = Finding.stop(
                "DOSE-OFF-DIAL", Place.at(files.planFile(), "/doses/fsh-pen/0/amount"), "no setting", "ask");
        List<Plan.Override> line = List.of(new Plan.Override(CODE, PLACE, REASON, BY));
        Verdict verdict = Verdict.of(with(files, line), List.of(stop));
        assertEquals(
                "this line accepts no warning of this issue: SUPPLY-SHORT at /on-hand/fsh-pen",
                verdict.notes().get(0).text());
    }

    @Test
    void neverAcceptsAStop() throws IOException {
        PlanFiles files = EditedDemo.unchanged("patients/SM-04417.yaml").files();
        Place place = Place.at(files.planFile(), "/doses/fsh-pen/0/amount");
        Finding stop = Finding.stop("DOSE-OFF-DIAL", place, "no setting", "ask");
        List<Plan.Override> line = List.of(new Plan.Override(stop.code(), place.pointer(), REASON, BY));
        Verdict verdict = Verdict.of(with(files, line), List.of(stop));
        assertTrue(verdict.hasStop());
        assertEquals(List.of(stop), verdict.stops());
        assertEquals(List.of("/overrides/0"), unused(verdict));
        assertEquals(
                "a stop cannot be accepted: DOSE-OFF-DIAL",
                verdict.notes().get(0).text());
    }

    private static List<String> unused(Verdict verdict) {
        return verdict.notes().stream()
                .filter(note -> note.code().equals("OVERRIDE-UNUSED"))
                .map(note -> note.place().pointer())
                .toList();
    }

    private static Verdict verdict(List<Plan.Override> overrides) throws IOException {
        EditedDemo demo = EditedDemo.unchanged("patients/SM-04417.yaml");
        return Verdict.of(with(demo.files(), overrides), demo.findings());
    }

    private static PlanFiles with(PlanFiles files, List<Plan.Override> overrides) {
        Plan plan = files.plan();
        Plan changed = new Plan(
                plan.id(),
                plan.issue(),
                plan.replaces(),
                plan.patient(),
                plan.language(),
                plan.paper(),
                plan.textSize(),
                plan.avoid(),
                plan.order(),
                plan.protocol(),
                plan.anchors(),
                plan.called(),
                plan.times(),
                plan.doses(),
                plan.onHand(),
                plan.record(),
                overrides,
                plan.prepared(),
                plan.countersigned());
        return new PlanFiles(
                changed,
                files.clinic(),
                files.protocol(),
                files.medicines(),
                files.planFile(),
                files.clinicFile(),
                files.protocolFile(),
                files.medicineFiles());
    }
}

package cyclepacket.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.PlanSketch;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.DayMark;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol;
import cyclepacket.plan.Revision;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Dates worked by hand on a calendar of March 2027: S1 is Friday the 5th. */
class CourseTest {
    private static PlanSketch sketch() {
        return new PlanSketch()
                .size("900", "900", "900")
                .home("900", "900", "900", "900")
                .dose(1, "150");
    }

    private static LocalDate march(int day) {
        return LocalDate.of(2027, 3, day);
    }

    private static Plan.Call called(String anchor, Plan.Moment at, boolean readBack) {
        return new Plan.Call(
                new Anchor(anchor), at, Optional.of("ORD-1"), "invented nurse", "the patient", march(3), readBack);
    }

    private static Plan.Moment at(LocalDateTime at) {
        return new Plan.Moment(at.toLocalDate(), Optional.of(at.toLocalTime()), Optional.empty());
    }

    /** The sketch with visits in its protocol. */
    private static Course withVisits(PlanSketch sketch, String... days) {
        PlanFiles files = sketch.files();
        Protocol own = files.protocol();
        List<Protocol.Visit> visits = List.of(days).stream()
                .map(day -> new Protocol.Visit(DayMark.parse(day), LocalTime.of(7, 30), "ultrasound"))
                .toList();
        Protocol protocol = new Protocol(
                own.id(),
                own.title(),
                own.anchors(),
                own.triggerBefore(),
                own.stimulationDays().orElseThrow(),
                own.rows(),
                visits);
        return Course.of(new PlanFiles(
                files.plan(),
                files.clinic(),
                protocol,
                files.medicines(),
                files.planFile(),
                files.clinicFile(),
                files.protocolFile(),
                files.medicineFiles()));
    }

    @Test
    void endsOnTheLastStimulationEveningWhileTheTriggerIsUnknown() {
        Course course = Course.of(sketch().files());
        assertEquals(Optional.of(march(5)), course.firstDay());
        // T is S14 at the latest, so T-1 is S13.
        assertEquals(Optional.of(march(17)), course.lastDay());
        assertEquals("S13", course.doses().get(12).day());
        assertEquals(13, course.doses().size());
        assertTrue(course.anchors().trigger().isEmpty());
    }

    @Test
    void countsTheMarksOfSAndT() {
        PlanSketch sketch = sketch();
        sketch.retrieval = Optional.of(LocalDateTime.of(2027, 3, 13, 8, 30));
        Anchors anchors = Course.of(sketch.files()).anchors();
        assertEquals(Optional.of(march(5)), anchors.date(DayMark.parse("S1")));
        assertEquals(Optional.of(march(10)), anchors.date(DayMark.parse("S6")));
        assertEquals(Optional.of(march(7)), anchors.date(DayMark.parse("S1+2")));
        assertEquals(Optional.of(march(4)), anchors.date(DayMark.parse("S1-1")));
        // 36 hours before 8:30 on the 13th is 20:30 on the 11th.
        assertEquals(Optional.of(march(11)), anchors.date(DayMark.parse("T")));
        assertEquals(Optional.of(march(10)), anchors.date(DayMark.parse("T-1")));
    }

    @Test
    void countsFromTheEveningBeforeATriggerAfterMidnight() {
        PlanSketch sketch = sketch();
        sketch.retrieval = Optional.of(LocalDateTime.of(2027, 3, 13, 12, 30));
        Course course = Course.of(sketch.files());
        assertEquals(
                LocalDateTime.of(2027, 3, 12, 0, 30),
                course.anchors().trigger().orElseThrow().at().toLocalDateTime());
        assertEquals(Optional.of(march(11)), course.anchors().date(DayMark.parse("T")));
        assertEquals(Optional.of(march(10)), course.lastDay());
    }

    @Test
    void makesEveryEveningFromTheNextVisitOnProvisional() {
        PlanSketch sketch = sketch();
        sketch.prepared = march(9);
        Course course = withVisits(sketch, "S8", "S5", "S10");
        // S5 is the 9th itself, which is no later date; S8 is the 12th.
        assertEquals(Optional.of(march(12)), course.provisionalFrom());
        for (DatedDose dose : course.doses()) {
            assertEquals(!dose.date().isBefore(march(12)), dose.isProvisional(), dose.day());
        }
    }

    @Test
    void holdsEveryEveningOnceNoVisitIsToCome() {
        PlanSketch sketch = sketch();
        sketch.prepared = march(12);
        Course course = withVisits(sketch, "S5", "S8");
        assertEquals(Optional.empty(), course.provisionalFrom());
        assertTrue(course.doses().stream().noneMatch(DatedDose::isProvisional));
    }

    @Test
    void takesAVisitInTheClinicsZoneWhateverThePatients() {
        PlanSketch sketch = sketch();
        sketch.patientZone = ZoneId.of("Pacific/Auckland");
        Course course = withVisits(sketch, "S5");
        assertEquals(
                march(9).atTime(7, 30).atZone(sketch.clinicZone),
                course.visits().get(0).at());
        assertEquals(
                march(5).atTime(20, 30).atZone(sketch.patientZone),
                course.doses().get(0).at());
    }

    @Test
    void isNotStartedByAPlannedDateOrByACallNobodyReadBack() {
        PlanSketch sketch = sketch();
        assertFalse(Course.of(sketch.files()).isStartCalled());
        Plan.Moment start = new Plan.Moment(march(5), Optional.empty(), Optional.empty());
        sketch.called.add(called("S1", start, false));
        assertFalse(Course.of(sketch.files()).isStartCalled());
        sketch.called.add(called("S1", start, true));
        assertTrue(Course.of(sketch.files()).isStartCalled());
    }

    @Test
    void isNotTriggeredByAPlannedRetrieval() {
        PlanSketch sketch = sketch();
        sketch.retrieval = Optional.of(LocalDateTime.of(2027, 3, 13, 8, 30));
        assertFalse(Course.of(sketch.files()).isTriggerCalled());
        sketch.called.add(called("T", at(LocalDateTime.of(2027, 3, 11, 20, 30)), true));
        assertTrue(Course.of(sketch.files()).isTriggerCalled());
    }

    private static Revision told(Revision.What what, int from, Optional<LocalDate> lastDay) {
        return new Revision(
                2,
                what,
                Optional.of(PlanSketch.PEN).filter(medicine -> what != Revision.What.CANCEL),
                Optional.of(march(from)),
                lastDay,
                Optional.empty(),
                Optional.of("ORD-2"),
                "invented nurse",
                "the patient",
                march(8),
                true);
    }

    private static Course cancelledFrom(int day) {
        PlanSketch sketch = sketch();
        sketch.retrieval = Optional.of(LocalDateTime.of(2027, 3, 13, 8, 30));
        sketch.called.add(called("T", at(LocalDateTime.of(2027, 3, 11, 20, 30)), true));
        sketch.revised.add(told(Revision.What.CANCEL, day, Optional.empty()));
        return Course.of(sketch.files());
    }

    /** Retrieval on the 13th, trigger on the evening of the 11th: whatever lies after the last day is gone. */
    @Test
    void hasNoTriggerAndNoRetrievalOnceTheCycleIsCancelled() {
        Anchors before = cancelledFrom(11).anchors();
        assertEquals(Optional.empty(), before.trigger());
        assertEquals(Optional.empty(), before.calledTrigger());
        assertEquals(Optional.empty(), before.retrieval());
        Anchors between = cancelledFrom(12).anchors();
        assertTrue(between.trigger().isPresent());
        assertTrue(between.calledTrigger().isPresent());
        assertEquals(Optional.empty(), between.retrieval());
        assertTrue(cancelledFrom(14).anchors().retrieval().isPresent());
        assertEquals(Optional.of(march(10)), cancelledFrom(12).lastDay());
        assertEquals(Optional.of(march(8)), cancelledFrom(9).lastDay());
        assertEquals(Optional.of(march(9)), cancelledFrom(9).cancelledFrom());
    }

    @Test
    void takesTheCalledTriggerWhereNoRetrievalIsKnown() {
        PlanSketch sketch = sketch();
        sketch.called.add(called("T", at(LocalDateTime.of(2027, 3, 12, 20, 30)), true));
        Course course = Course.of(sketch.files());
        assertEquals(
                LocalDateTime.of(2027, 3, 12, 20, 30),
                course.anchors().trigger().orElseThrow().at().toLocalDateTime());
        assertEquals(Optional.of(march(11)), course.lastDay());
    }

    @Test
    void listsTheEveningsThatAnOrderHoldsBack() {
        PlanSketch sketch = sketch();
        sketch.revised.add(told(Revision.What.HOLD, 9, Optional.of(march(10))));
        Course course = Course.of(sketch.files());
        assertEquals(
                List.of("2027-03-09 S5", "2027-03-10 S6"),
                course.heldOf(PlanSketch.PEN).stream()
                        .map(held -> held.date() + " " + held.day())
                        .toList());
        assertEquals(11, course.dosesOf(PlanSketch.PEN).size());
        assertEquals(List.of(), course.heldOf("syringe"));
    }

    @Test
    void appliesDoseLinesByDateAndNotByPlace() {
        PlanSketch sketch = sketch();
        sketch.doses.clear();
        sketch.dose(6, "225").dose(1, "150").dose(9, "75");
        List<DatedDose> doses = Course.of(sketch.files()).doses();
        for (int evening = 1; evening <= doses.size(); evening++) {
            String amount = evening < 6 ? "150" : evening < 9 ? "225" : "75";
            DatedDose dose = doses.get(evening - 1);
            assertEquals(PlanSketch.units(amount), dose.amount(), dose.day());
            assertEquals(Optional.of(evening < 6 ? 1 : evening < 9 ? 0 : 2), dose.doseLine(), dose.day());
        }
    }

    @Test
    void doubtsEveryEveningBeforeTheFirstDoseLine() {
        PlanSketch sketch = sketch();
        sketch.doses.clear();
        sketch.dose(3, "150");
        Course course = Course.of(sketch.files());
        assertEquals(Optional.of(march(7)), course.firstDay());
        assertEquals(
                List.of("pen on 2027-03-05", "pen on 2027-03-06"),
                course.doubts().stream()
                        .filter(doubt -> doubt.kind() == CourseDoubt.Kind.DOSE_ABSENT)
                        .map(CourseDoubt::subject)
                        .toList());
    }

    @Test
    void doubtsAnEveningHourThatTheClockChangeRemoves() {
        PlanSketch sketch = sketch();
        sketch.evening = LocalTime.of(2, 30);
        List<CourseDoubt> doubts = Course.of(sketch.files()).doubts();
        assertEquals(
                List.of(new CourseDoubt(
                        CourseDoubt.Kind.TIME_REMOVED, true, "/times/evening", "2027-03-14T02:30 in America/New_York")),
                doubts);
    }
}

package cyclepacket.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import cyclepacket.PlanSketch;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.Plan;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Anchors that wait, that only a call names, that have no hour or no day, or a day in the wrong year. */
class AnchorEdgesTest {
    private static final String AGONIST = "leuprolide-vial, from: ML, until: T-1, at: morning, half-from: S1";

    private static List<LocalDate> days(Course course, String medicine) {
        return course.dosesOf(medicine).stream().map(DatedDose::date).toList();
    }

    private static LocalDate last(List<LocalDate> days) {
        return days.get(days.size() - 1);
    }

    private static List<String> doubts(Course course, CourseDoubt.Kind kind) {
        return course.doubts().stream()
                .filter(doubt -> doubt.kind() == kind)
                .map(CourseDoubt::subject)
                .toList();
    }

    private static Course agonistUntil(String mark) throws IOException {
        return LaidOut.demo("LM-06233")
                .with(
                        "protocols/long-agonist.yaml",
                        AGONIST,
                        AGONIST.replace("until: T-1, at: morning, half-from: S1", "until: " + mark + ", at: morning"))
                .course();
    }

    /** ML is 8 April, so S1 is 26 April at the latest; the day before it is the last that is looked at. */
    @Test
    void looksNoFurtherThanTheLatestDayOfAnAnchorThatWaits() throws IOException {
        assertEquals(LocalDate.of(2027, 4, 25), last(days(agonistUntil("S1-1"), "leuprolide-vial")));
        assertEquals(LocalDate.of(2027, 4, 23), last(days(agonistUntil("S1-3"), "leuprolide-vial")));
        assertEquals(LocalDate.of(2027, 4, 25), last(days(agonistUntil("S1+2"), "leuprolide-vial")));
    }

    @Test
    void takesTheDayOfACallThatStandsInNoAnchor() throws IOException {
        Course course = LaidOut.demo("LM-06233-issue-2")
                .with("patients/LM-06233-issue-2.yaml", "ML: 2027-04-08, S1: 2027-04-24}", "ML: 2027-04-08}")
                .course();
        assertEquals(Optional.of(LocalDate.of(2027, 4, 24)), course.anchors().date(Anchor.S1));
        assertEquals(LocalDate.of(2027, 4, 24), days(course, "menotropin-vial").get(0));
    }

    private static Course triggerCalledAt(Plan.Moment at) {
        PlanSketch sketch = new PlanSketch()
                .size("900", "900", "900")
                .home("900", "900", "900", "900")
                .dose(1, "150");
        sketch.called.add(new Plan.Call(
                Anchor.T, at, Optional.of("ORD-1"), "invented nurse", "the patient", LocalDate.of(2027, 3, 3), true));
        return Course.of(sketch.files());
    }

    @Test
    void doubtsATriggerWithoutAnHourAndOneThatTheClockSkips() {
        LocalDate day = LocalDate.of(2027, 3, 14);
        Course bare = triggerCalledAt(new Plan.Moment(day, Optional.empty(), Optional.empty()));
        assertEquals(List.of("T"), doubts(bare, CourseDoubt.Kind.HOUR_ABSENT));
        assertEquals(Optional.empty(), bare.anchors().trigger());
        Course skipped = triggerCalledAt(new Plan.Moment(day, Optional.of(LocalTime.of(2, 30)), Optional.empty()));
        assertEquals(List.of("2027-03-14T02:30 in America/New_York"), doubts(skipped, CourseDoubt.Kind.TIME_REMOVED));
        assertEquals(Optional.empty(), skipped.anchors().trigger());
    }

    @Test
    void doubtsARowThatHangsOnADayNobodyWrote() throws IOException {
        Course course = LaidOut.demo("SM-04417")
                .with("protocols/antagonist-fixed.yaml", "from: S6, until: T-1", "from: R-9, until: T-1")
                .course();
        assertTrue(
                doubts(course, CourseDoubt.Kind.ANCHOR_UNDATED).contains("R"),
                course.doubts().toString());
        assertEquals(List.of(), days(course, "antagonist-syringe"));
    }

    private static Course transferCourse(String progesterone) throws IOException {
        return LaidOut.demo("FT-08440-issue-2")
                .with("patients/FT-08440-issue-2.yaml", "2027-06-17T19:00", progesterone)
                .course();
    }

    /** E1 is 4 June 2027; 400 days on it is 8 July 2028, which is P+9 when P is 29 June 2028. */
    @Test
    void dropsWhatWouldGoOnForMoreThan400Days() throws IOException {
        Course longest = transferCourse("2028-06-29T19:00");
        assertEquals(List.of(), doubts(longest, CourseDoubt.Kind.ROW_TOO_LONG));
        assertEquals(802, longest.dosesOf("estradiol-tablet").size());
        Course wrongYear = transferCourse("2028-06-30T19:00");
        assertEquals(
                List.of(
                        "estradiol-tablet until 2028-07-09",
                        "estradiol-patch until 2028-07-09",
                        "progesterone-oil until 2028-07-09"),
                doubts(wrongYear, CourseDoubt.Kind.ROW_TOO_LONG));
        assertEquals(List.of(), wrongYear.doses());
    }

    /** Retrieval 15 March 08:30; 36 hours before it the clock shows 13 March 19:30, since it skips an hour that night. */
    @Test
    void countsHoursFromAnInstantAlone() throws IOException {
        String row = "{medicine: trigger-syringe, on: T, at: exact, amount: 250}";
        Course every = LaidOut.demo("SM-04417-issue-2")
                .with(
                        "protocols/antagonist-fixed.yaml",
                        row,
                        "{medicine: trigger-syringe, from: T, until: T+1, at: exact, every-hours: 12, amount: 250}")
                .course();
        assertEquals(
                List.of("2027-03-13T19:30", "2027-03-14T08:30", "2027-03-14T20:30"),
                every.dosesOf("trigger-syringe").stream()
                        .map(dose -> dose.at().toLocalDateTime().toString())
                        .toList());
        Course without = LaidOut.demo("FT-08440-issue-2")
                .with("protocols/frozen-medicated.yaml", "progesterone-oil, from: P,", "progesterone-oil, from: P+1,")
                .course();
        assertEquals(List.of("P+1"), doubts(without, CourseDoubt.Kind.EXACT_WITHOUT_TRIGGER));
        Course noMinute = LaidOut.demo("FT-08440-issue-2")
                .with("protocols/frozen-medicated.yaml", "progesterone-oil, from: P,", "progesterone-oil, from: E1,")
                .course();
        assertEquals(List.of("E1"), doubts(noMinute, CourseDoubt.Kind.EXACT_WITHOUT_TRIGGER));
        assertEquals(List.of(), without.dosesOf("progesterone-oil"));
    }

    /** P is 17 June at 19:00. What begins two days before it goes on that morning; only what begins with P waits for its hour. */
    @Test
    void keepsTheMorningOfAnAnchorWithAnHour() throws IOException {
        String row = "estradiol-patch, from: E1, until: P+9, at: morning, every-days: 3";
        LaidOut plan = LaidOut.demo("FT-08440-issue-2");
        String protocol = "protocols/frozen-medicated.yaml";
        Course before = plan.with(protocol, row, "estradiol-patch, from: P-2, until: P+9, at: morning, every-days: 1")
                .course();
        assertEquals(
                LocalDateTime.of(2027, 6, 17, 8, 0),
                before.dosesOf("estradiol-patch").get(2).at().toLocalDateTime());
        Course with = plan.with(protocol, "estradiol-patch, from: P-2", "estradiol-patch, from: P")
                .course();
        assertEquals(LocalDate.of(2027, 6, 18), days(with, "estradiol-patch").get(0));
    }

    /** The retrieval is planned and nobody has called the trigger. */
    @Test
    void holdsATriggerThatWasNotCalled() throws IOException {
        assertTrue(LaidOut.demo("SM-04417-issue-2")
                .course()
                .dosesOf("trigger-syringe")
                .get(0)
                .isProvisional());
        assertFalse(LaidOut.demo("SM-04417-issue-3")
                .course()
                .dosesOf("trigger-syringe")
                .get(0)
                .isProvisional());
    }
}

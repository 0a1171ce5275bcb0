package cyclepacket.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import cyclepacket.plan.Anchor;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The rows and anchors of the protocols besides the fixed antagonist one, on the files of the demo. */
class FormsCourseTest {
    private static List<String> at(Course course, String medicine) {
        return course.dosesOf(medicine).stream()
                .map(dose -> dose.at().toLocalDateTime() + " " + dose.amount())
                .toList();
    }

    private static String days(Course course, String medicine) {
        return course.dosesOf(medicine).stream()
                .map(dose -> Integer.toString(dose.date().getDayOfMonth()))
                .collect(Collectors.joining(" "));
    }

    @Test
    void halvesTheAgonistOnTheDayStimulationStarts() throws IOException {
        Course course = LaidOut.demo("LM-06233-issue-2").course();
        List<String> doses = at(course, "leuprolide-vial");
        assertTrue(doses.contains("2027-04-23T07:30 0.5 mg"), doses.toString());
        assertTrue(doses.contains("2027-04-24T07:30 0.25 mg"), doses.toString());
        assertEquals("ML", course.dosesOf("leuprolide-vial").get(0).day());
        assertEquals("S1", course.dosesOf("menotropin-vial").get(0).day());
    }

    /** Until S1 is called the agonist is listed at full dose to the day before the latest S1, and the rest waits. */
    @Test
    void waitsForTheCallOfS1() throws IOException {
        Course course = LaidOut.demo("LM-06233-issue-2")
                .with("patients/LM-06233-issue-2.yaml", "  - {anchor: S1", "  - {anchor: R")
                .course();
        assertEquals(
                List.of("menotropin-vial"),
                course.waiting().stream().map(WaitingRow::medicine).toList());
        assertEquals(new Anchor("S1"), course.waiting().get(0).anchor());
        List<String> doses = at(course, "leuprolide-vial");
        assertEquals("2027-04-25T07:30 0.5 mg", doses.get(doses.size() - 1));
    }

    @Test
    void keepsAnAntagonistWaitingUntilItsCall() throws IOException {
        Course course = LaidOut.demo("DA-05120").course();
        assertEquals(List.of(), course.dosesOf("antagonist-syringe"));
        assertEquals("antagonist-syringe", course.waiting().get(0).medicine());
        Course called = LaidOut.demo("EF-07318-issue-2").course();
        assertEquals("8 9 10 11", days(called, "antagonist-syringe"));
        assertEquals(List.of(), called.waiting());
    }

    /** Retrieval 14 May 09:00 in New York, 36 hours: 12 May 21:00 there, 18:00 in Los Angeles; twelve hours on, 06:00. */
    @Test
    void givesATriggerInTwoParts() throws IOException {
        Course course = LaidOut.demo("EF-07318-issue-2").course();
        assertEquals(List.of("2027-05-12T18:00 4 mg", "2027-05-13T06:00 2 mg"), at(course, "leuprolide-trigger"));
        assertTrue(course.dosesOf("leuprolide-trigger").stream().allMatch(DatedDose::isExact));
        assertEquals(
                LocalDate.of(2027, 5, 13),
                course.dosesOf("leuprolide-trigger").get(1).date());
    }

    @Test
    void countsProgesteroneByTheHour() throws IOException {
        Course course = LaidOut.demo("FT-08440-issue-2").course();
        List<String> doses = at(course, "progesterone-oil");
        assertEquals("2027-06-17T19:00 50 mg", doses.get(0));
        assertEquals("2027-06-18T19:00 50 mg", doses.get(1));
        assertEquals(10, doses.size());
        DatedVisit transfer = course.visits().stream()
                .filter(visit -> visit.what().startsWith("transfer"))
                .findFirst()
                .orElseThrow();
        assertEquals("2027-06-22T19:00", transfer.at().toLocalDateTime().toString());
    }

    @Test
    void givesTabletsTwiceADayAndPatchesOnADateGrid() throws IOException {
        Course course = LaidOut.demo("FT-08440-issue-2").course();
        List<String> tablets = at(course, "estradiol-tablet");
        assertEquals("2027-06-04T08:00 2 mg", tablets.get(0));
        assertEquals("2027-06-04T20:00 2 mg", tablets.get(1));
        assertEquals("2027-06-08T08:00 3 mg", tablets.get(8));
        assertEquals("4 7 10 13 16 19 22 25", days(course, "estradiol-patch"));
    }

    @Test
    void skipsEveryOtherEvening() throws IOException {
        Course course = LaidOut.plan("minimal-stimulation", "{CD1: \"2027-03-01T10:00\", S1: 2027-03-08}")
                .course();
        assertEquals("3 4 5 6 7", days(course, "letrozole-tablet"));
        assertEquals("8 10 12 14 16", days(course, "menotropin-vial"));
    }

    /** The clinic's cut-off is 15:00: a flow that begins at that hour counts from the next day. */
    @Test
    void countsCycleDayOneFromTheCutOff() throws IOException {
        String before = "{CD1: \"2027-03-01T14:59\", S1: 2027-03-08}";
        String at = "{CD1: \"2027-03-01T15:00\", S1: 2027-03-08}";
        assertEquals(
                "3 4 5 6 7", days(LaidOut.plan("minimal-stimulation", before).course(), "letrozole-tablet"));
        assertEquals("4 5 6 7 8", days(LaidOut.plan("minimal-stimulation", at).course(), "letrozole-tablet"));
    }

    /** In a clinic that starts at S0 the sixth evening is S5, in the files and in the course alike. */
    @Test
    void countsStimulationDaysFromZeroWhereTheClinicDoes() throws IOException {
        Course course = LaidOut.plan("antagonist-fixed", "{S1: 2027-03-03}")
                .with("clinic.yaml", "house-rules:\n", "house-rules:\n  first-stimulation-day: S0\n")
                .with("protocols/antagonist-fixed.yaml", "from: S1,", "from: S0,")
                .with("protocols/antagonist-fixed.yaml", "from: S6,", "from: S5,")
                .with("patients/X-antagonist-fixed.yaml", "{from: S1,", "{from: S0,")
                .course();
        assertEquals("3 4 5 6 7 8 9 10 11 12 13 14 15", days(course, "fsh-pen"));
        assertEquals("8 9 10 11 12 13 14 15", days(course, "antagonist-syringe"));
        assertEquals("S0", course.dosesOf("fsh-pen").get(0).day());
        assertEquals("S5", course.dosesOf("antagonist-syringe").get(0).day());
    }

    /** Insemination 15 March 09:00 in New York is 36 hours after 13 March 20:00: the clocks go forward between. */
    @Test
    void countsTheTriggerBackFromAnInsemination() throws IOException {
        Course course = LaidOut.plan(
                        "low-dose-insemination", "{CD1: 2027-03-01, S1: 2027-03-03, I: \"2027-03-15T09:00\"}")
                .course();
        assertEquals(List.of("2027-03-13T20:00 250 mcg"), at(course, "trigger-syringe"));
        assertEquals(
                "2027-03-15T09:00",
                course.visits()
                        .get(course.visits().size() - 1)
                        .at()
                        .toLocalDateTime()
                        .toString());
    }

    /** 40 and 34 hours before 15 March 09:00, elapsed over the change of the clocks. */
    @Test
    void givesTwoMedicinesAtTwoHours() throws IOException {
        Course course = LaidOut.plan("two-medicine-trigger", "{S1: 2027-03-03, R: \"2027-03-15T09:00\"}")
                .course();
        assertEquals(List.of("2027-03-13T16:00 4 mg"), at(course, "leuprolide-trigger"));
        assertEquals(List.of("2027-03-13T22:00 250 mcg"), at(course, "trigger-syringe"));
    }
}

package cyclepacket.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Amounts of the protocol's own, products in place of others, what never waits, and the order of it all. */
class RowEdgesTest {
    private static List<String> absent(Course course) {
        return course.doubts().stream()
                .filter(doubt -> doubt.kind() == CourseDoubt.Kind.DOSE_ABSENT)
                .map(CourseDoubt::subject)
                .toList();
    }

    /** 0.25 mg is meant for the antagonist; another product in its place from 12 March, the last evening, has no amount. */
    @Test
    void neverGivesAProtocolsAmountOfOneProductInAnother() throws IOException {
        Course course = LaidOut.demo("SM-04417-issue-2")
                .revised("what: swap, of: antagonist-syringe, from: 2027-03-12, now: trigger-syringe")
                .course();
        assertEquals(
                List.of("2027-03-10 0.25 mg", "2027-03-11 0.25 mg"),
                course.dosesOf("antagonist-syringe").stream()
                        .map(dose -> dose.date() + " " + dose.amount())
                        .toList());
        assertEquals(1, course.dosesOf("trigger-syringe").size());
        assertEquals(List.of("trigger-syringe on 2027-03-12"), absent(course));
    }

    /** The agonist's row has an amount of its own, 0.5 mg, and is halved from S1 on, 24 April. */
    @Test
    void halvesAnAmountOfTheProtocolToo() throws IOException {
        Course course = LaidOut.demo("LM-06233-issue-2")
                .with("protocols/long-agonist.yaml", "half-from: S1}", "half-from: S1, amount: 0.5}")
                .with(
                        "patients/LM-06233-issue-2.yaml",
                        "  leuprolide-vial:\n    - {from: ML, amount: 0.5, order: ORD-1402}\n",
                        "")
                .course();
        List<String> doses = course.dosesOf("leuprolide-vial").stream()
                .map(dose -> dose.date() + " " + dose.amount())
                .toList();
        assertTrue(doses.contains("2027-04-23 0.5 mg"), doses.toString());
        assertTrue(doses.contains("2027-04-24 0.25 mg"), doses.toString());
    }

    /** S1 is 24 April, from when 0.5 mg is halved; 0.3 mg, ordered from the 26th on, is what the prescriber means. */
    @Test
    void neverHalvesWhatWasOrderedSince() throws IOException {
        Course course = LaidOut.demo("LM-06233-issue-2")
                .with(
                        "patients/LM-06233-issue-2.yaml",
                        "    - {from: ML, amount: 0.5, order: ORD-1402}\n",
                        "    - {from: ML, amount: 0.5, order: ORD-1402}\n"
                                + "    - {from: 2027-04-26, amount: 0.3, order: ORD-1440}\n")
                .course();
        List<String> doses = course.dosesOf("leuprolide-vial").stream()
                .map(dose -> dose.date() + " " + dose.amount())
                .toList();
        assertTrue(doses.contains("2027-04-25 0.25 mg"), doses.toString());
        assertTrue(doses.contains("2027-04-26 0.3 mg"), doses.toString());
    }

    /** Patches stand for the tablets from 20 June on, and are stopped from the 22nd. */
    @Test
    void stopsARowByTheProductThatStandsForIt() throws IOException {
        Course course = LaidOut.demo("FT-08440-issue-2")
                .revised(
                        "what: swap, of: estradiol-tablet, from: 2027-06-20, now: estradiol-patch",
                        "what: stop, of: estradiol-patch, from: 2027-06-22")
                .course();
        List<String> absent = absent(course);
        assertTrue(absent.contains("estradiol-patch on 2027-06-21"), absent.toString());
        assertFalse(absent.contains("estradiol-patch on 2027-06-22"), absent.toString());
    }

    /** Two parts: 12 May, 18:00 and 13 May, 06:00. Nothing is injected from the 13th on. */
    @Test
    void leavesOutAPartOfTheTriggerAfterTheEnd() throws IOException {
        LaidOut plan = LaidOut.demo("EF-07318-issue-2");
        assertEquals(2, plan.course().dosesOf("leuprolide-trigger").size());
        Course ended = plan.revised("what: cancel, from: 2027-05-13").course();
        assertEquals(
                List.of(LocalDate.of(2027, 5, 12)),
                ended.dosesOf("leuprolide-trigger").stream()
                        .map(DatedDose::date)
                        .toList());
    }

    @Test
    void listsDosesAndVisitsInTheOrderOfTheirInstants() throws IOException {
        LaidOut plan = LaidOut.demo("LS-09102")
                .with("protocols/luteal-support.yaml", "on: R+5,", "on: R+20,")
                .with("protocols/luteal-support.yaml", "on: R+15,", "on: R+4,");
        Course course = plan.course();
        List<ZonedDateTime> doses = course.doses().stream().map(DatedDose::at).toList();
        assertEquals(doses.stream().sorted(Comparator.naturalOrder()).toList(), doses);
        assertEquals(
                List.of("R+4", "R+20"),
                course.visits().stream().map(DatedVisit::day).toList());
    }

    /** The transfer is on 17 May; support goes on past it whether or not anybody calls. */
    @Test
    void neverHoldsWhatGoesOnUntilToldToStop() throws IOException {
        Course course = LaidOut.demo("LS-09102").course();
        assertEquals(LocalDate.of(2027, 5, 17), course.provisionalFrom().orElseThrow());
        assertTrue(course.doses().stream().noneMatch(DatedDose::isProvisional));
    }
}

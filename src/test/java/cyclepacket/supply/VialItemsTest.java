package cyclepacket.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.LaidOut;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What lies on the table besides vials, counted by hand; two spares of each needle and syringe. */
class VialItemsTest {
    private static List<String> items(LaidOut plan) throws IOException {
        return SupplyPlan.of(plan.files(), plan.ledger()).items().stream()
                .map(item -> item.count() + " " + item.kind().word()
                        + item.needle()
                                .map(needle -> " " + needle.gauge() + " G")
                                .or(() -> item.size().map(size -> " " + size))
                                .orElse(""))
                .collect(Collectors.toList());
    }

    /**
     * Sixteen mornings with the small vial, thirteen evenings with powder vials, one ready syringe whose day is not
     * called. Swabs: two for each of 30 injections, and one for each of the 39 vials that are mixed.
     */
    @Test
    void countsNeedlesAndSyringesOfALongCycle() throws IOException {
        assertEquals(
                List.of(
                        "18 empty syringe 0.5 mL syringe with 50 marks",
                        "18 injection needle 29 G",
                        "15 empty syringe 1 mL syringe",
                        "15 mixing needle 21 G",
                        "15 injection needle 27 G",
                        "99 alcohol swab",
                        "1 sharps container"),
                items(LaidOut.demo("LM-06233-issue-2")));
    }

    /** Before stimulation is called the powder has no day, and nothing lies ready for it. */
    @Test
    void countsNothingForWhatHasNoDayYet() throws IOException {
        List<String> items = items(LaidOut.demo("LM-06233"));
        assertTrue(items.contains("20 empty syringe 0.5 mL syringe with 50 marks"), items.toString());
        assertTrue(items.stream().noneMatch(item -> item.contains("mixing needle")), items.toString());
    }

    /** One powder at the trigger alone, whose day nobody called: 17 injections take 34 swabs, and its vial takes one. */
    @Test
    void wipesAVialThatHasNoDayToo() throws IOException {
        LaidOut plan = LaidOut.demo("LM-06233-issue-2")
                .with(
                        "protocols/long-agonist.yaml",
                        "  - {medicine: menotropin-vial, from: S1, until: T-1, at: evening}\n"
                                + "  - {medicine: trigger-syringe, on: T, at: exact, amount: 250}",
                        "  - {medicine: menotropin-vial, on: T, at: exact, amount: 75}")
                .with(
                        "patients/LM-06233-issue-2.yaml",
                        "  trigger-syringe: [{size: 250, count: 1, expires: 2028-02-28}]\n",
                        "");
        assertTrue(items(plan).contains("35 alcohol swab"), items(plan).toString());
    }

    /** 108 units are 0.48 mL, and 0.02 mL is lost: four come out of 2 mL to the last drop. Thirteen take four vials. */
    @Test
    void drawsAKeptVialToTheLastDrop() throws IOException {
        String dose = "doses:\n  fsh-kept-vial:\n    - {from: S1, amount: 108, order: ORD-1}\n";
        List<String> items = items(LaidOut.plan("antagonist-step", "{S1: 2027-03-03}", dose));
        assertTrue(items.contains("6 mixing needle 21 G"), items.toString());
    }

    /** Two parts of a trigger from a vial, whose hour nobody called, and two spares. */
    @Test
    void countsAPartOfTheTriggerThatHasNoDay() throws IOException {
        List<String> items = items(LaidOut.demo("EF-07318"));
        assertTrue(items.contains("4 empty syringe 1 mL syringe with 100 marks"), items.toString());
    }

    /** Oil takes a needle to draw up and another to inject; tablets and patches take nothing. */
    @Test
    void countsTwoNeedlesForOil() throws IOException {
        assertEquals(
                List.of(
                        "12 empty syringe 3 mL syringe",
                        "12 drawing needle 18 G",
                        "12 injection needle 22 G",
                        "20 alcohol swab",
                        "1 sharps container"),
                items(LaidOut.demo("FT-08440-issue-2")));
    }

    /**
     * Thirteen doses of 135, 180 and 90 (0.6, 0.8 and 0.4 mL) of a powder that is kept, 2 mL in a vial of 450 and 0.02 mL
     * lost each time. Three times 0.62; then 0.62 and 0.82; then twice 0.82; then four times 0.42; then twice: five vials.
     */
    @Test
    void mixesAKeptVialOnce() throws IOException {
        String steps = "doses:\n  fsh-kept-vial:\n    - {from: S1, amount: 135, order: ORD-1}\n"
                + "    - {from: S5, amount: 180, order: ORD-1}\n    - {from: S8, amount: 90, order: ORD-1}\n";
        List<String> items = items(LaidOut.plan("antagonist-step", "{S1: 2027-03-03}", steps));
        assertTrue(items.contains("7 mixing needle 21 G"), items.toString());
        assertTrue(items.contains("15 empty syringe 1 mL syringe with 100 marks"), items.toString());
        assertTrue(items.contains("15 injection needle 29 G"), items.toString());
    }

    /** The same course with five vials at home: the next one is mixed on the 4th, 6th, 8th and 12th evening. */
    @Test
    void endsKeptVialsWhereTheNextDoseNoLongerComesOut() throws IOException {
        String steps = "doses:\n  fsh-kept-vial:\n    - {from: S1, amount: 135, order: ORD-1}\n"
                + "    - {from: S5, amount: 180, order: ORD-1}\n    - {from: S8, amount: 90, order: ORD-1}\n"
                + "on-hand:\n  fsh-kept-vial: [{size: 450, count: 5, expires: 2028-01-31}]\n";
        assertEquals(
                List.of("2027-03-06 1", "2027-03-08 2", "2027-03-10 3", "2027-03-14 4"),
                LaidOut.plan("antagonist-step", "{S1: 2027-03-03}", steps)
                        .ledger()
                        .of("fsh-kept-vial")
                        .orElseThrow()
                        .days()
                        .stream()
                        .flatMap(day -> day.changes().stream()
                                .map(change -> day.evening().date() + " " + change.leaving()))
                        .collect(Collectors.toList()));
    }

    /** Fifteen days of the weak vial, morning and evening; two spares. */
    @Test
    void countsSyringesOfADilutedVial() throws IOException {
        List<String> items = items(flare());
        assertTrue(items.contains("32 empty syringe 1 mL syringe with 100 marks"), items.toString());
        assertTrue(items.contains("32 injection needle 29 G"), items.toString());
    }

    /**
     * The same with 200 mcg: each takes 1 mL, and 0.02 mL is lost, so nine come out of 10 mL. Thirty take four vials,
     * though the labels of three already say 6,000 mcg.
     */
    @Test
    void buysDilutedVialsByWholeDoses() throws IOException {
        LaidOut plan = flare().with("protocols/microdose-flare.yaml", "amount: 40}", "amount: 200}");
        assertEquals(
                4,
                SupplyPlan.of(plan.files(), plan.ledger())
                        .of("leuprolide-micro")
                        .orElseThrow()
                        .purchase()
                        .chosen()
                        .orElseThrow()
                        .count());
    }

    /** S1 to S13 at the longest, the agonist from two days before. */
    private static LaidOut flare() throws IOException {
        return LaidOut.plan("microdose-flare", "{LP: 2027-03-10, F1: 2027-03-13, S1: 2027-03-15}");
    }

    @Test
    void takesSoapWhereAlcoholIsAvoided() throws IOException {
        LaidOut plan = LaidOut.demo("LS-09102");
        assertTrue(items(plan).stream().noneMatch(item -> item.endsWith("soap")));
        List<String> items = items(plan.with("patients/LS-09102.yaml", "avoid: []", "avoid: [alcohol]"));
        assertTrue(items.contains("1 soap"), items.toString());
        assertTrue(items.stream().noneMatch(item -> item.endsWith("alcohol swab")), items.toString());
    }

    /** The long cycle again: 30 syringes, and 18, 15 and 15 needles besides, are 78. */
    @Test
    void throwsNeedlesOfVialsAway() throws IOException {
        LaidOut plan = LaidOut.demo("LM-06233-issue-2")
                .with(
                        "clinic.yaml",
                        "approved: ",
                        "supplies: {sharps-containers: [{size: small, holds: 77}, {size: large, holds: 78}]}\napproved: ");
        assertTrue(items(plan).contains("1 sharps container large"));
    }
}

package cyclepacket.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cyclepacket.VialSketch;
import cyclepacket.plan.FormRules;
import cyclepacket.plan.Medicine;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Refusal;
import cyclepacket.quantity.Volume;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Vials, volumes and marks, worked by hand. */
class MeasuringTest {
    private static final FormRules FOUR_VIALS = new FormRules(Map.of("menotropin", 4), List.of());

    private static Measuring of(Medicine medicine) {
        return Measuring.of(medicine, FOUR_VIALS).orElseThrow();
    }

    private static String measured(Medicine medicine, String dose) {
        Measure measure = of(medicine).measure(Dose.parse(dose)).orElseThrow();
        return measure.vials() + " vials, " + measure.drawn() + ", " + measure.mark() + ", rest " + measure.rest();
    }

    private static Measuring.Hitch hitch(Medicine medicine, String dose) {
        return of(medicine).hitch(Dose.parse(dose)).orElseThrow();
    }

    /** 300 = 4 x 75 in one diluent of 1 mL: all of it. */
    @Test
    void mixesFourVialsIntoOneMillilitre() {
        assertEquals("4 vials, 1 mL, 1 mark, rest 0 units", measured(VialSketch.menotropin(), "300 units"));
    }

    /** 112.5 = one and a half vials: two in 1 mL are 150 in 1 mL, so 0.75 mL; 37.5 are thrown away. */
    @Test
    void throwsAwayTheRestOfAPartVial() {
        assertEquals("2 vials, 0.75 mL, 0.75 mark, rest 37.5 units", measured(VialSketch.menotropin(), "112.5 units"));
    }

    @Test
    void measuresNothingOfNothing() {
        assertEquals(Optional.empty(), of(VialSketch.leuprolide("marks-100")).measure(Dose.parse("0 mg")));
        assertEquals(Optional.empty(), of(VialSketch.menotropin()).measure(Dose.parse("0 units")));
    }

    @Test
    void stopsAtTheClinicsNumberOfVials() {
        assertEquals(Measuring.Hitch.TOO_MANY_VIALS, hitch(VialSketch.menotropin(), "375 units"));
        assertEquals(
                Optional.of(Measuring.Hitch.NO_VIAL_RULE),
                Measuring.of(VialSketch.menotropin(), FormRules.none())
                        .orElseThrow()
                        .hitch(Dose.parse("75 units")));
    }

    /** 5 mg in 1 mL: 4 mg are 0.8 mL, the 80 mark of a hundred; 0.25 mg are the 5 mark. */
    @Test
    void findsTheMarkAndNotANumberOfUnits() {
        Medicine vial = VialSketch.leuprolide("marks-100");
        assertEquals("1 vials, 0.8 mL, 80 mark, rest 0 mg", measured(vial, "4 mg"));
        assertEquals("1 vials, 0.05 mL, 5 mark, rest 0 mg", measured(vial, "0.25 mg"));
    }

    @Test
    void refusesWhatDoesNotFitIntoTheSmallerSyringe() {
        Medicine vial = VialSketch.leuprolide("marks-50");
        assertEquals(Measuring.Hitch.DOES_NOT_FIT, hitch(vial, "4 mg"));
        assertEquals("1 vials, 0.5 mL, 50 mark, rest 0 mg", measured(vial, "2.5 mg"));
        assertEquals(Measuring.Hitch.DOES_NOT_FIT, hitch(vial, "2.505 mg"));
    }

    /** The last line of 50 is 0.5 mL, and 5 mg in 1 mL make 2.5 mg of it: the most that fits, and nothing lies above. */
    @Test
    void namesTheMostThatFitsForADoseThatDoesNot() {
        Measuring small = of(VialSketch.leuprolide("marks-50"));
        assertEquals(Optional.of(Dose.parse("2.5 mg")), small.nearestBelow(Dose.parse("4 mg")));
        assertEquals(Optional.of(Dose.parse("2.5 mg")), small.nearestBelow(Dose.parse("2.505 mg")));
        assertEquals(Optional.of(Dose.parse("2.45 mg")), small.nearestBelow(Dose.parse("2.5 mg")));
        assertEquals(Optional.empty(), small.nearestAbove(Dose.parse("4 mg")));
    }

    /**
     * With a line every 0.2 mL of 1 mL, one vial of 75 gives 15, 30, 45, 60 and 75; two give 90, 120 and 150; three 180 and
     * 225; four 240 and 300. With three vials mixed a line also stands for 135, but 135 is mixed from two, and then it lies
     * between lines: it is no answer.
     */
    @Test
    void namesOnlyNeighboursThatCanBeMeasured() {
        Measuring coarse = of(VialSketch.coarse());
        assertEquals(Measuring.Hitch.BETWEEN_MARKS, hitch(VialSketch.coarse(), "135 units"));
        assertEquals(Optional.of(Dose.parse("150 units")), coarse.nearestBelow(Dose.parse("155 units")));
        assertEquals(Optional.of(Dose.parse("120 units")), coarse.nearestBelow(Dose.parse("140 units")));
        assertEquals(Optional.of(Dose.parse("150 units")), coarse.nearestAbove(Dose.parse("125 units")));
        assertEquals(Optional.of(Dose.parse("180 units")), coarse.nearestAbove(Dose.parse("155 units")));
        assertEquals(Optional.of(Dose.parse("225 units")), coarse.nearestBelow(Dose.parse("230 units")));
        assertEquals(Optional.of(Dose.parse("240 units")), coarse.nearestAbove(Dose.parse("230 units")));
        assertEquals(Optional.empty(), coarse.nearestAbove(Dose.parse("300 units")));
        Measuring unruled = Measuring.of(VialSketch.coarse(), FormRules.none()).orElseThrow();
        assertEquals(Optional.empty(), unruled.nearestBelow(Dose.parse("155 units")));
    }

    @Test
    void refusesADoseBetweenTwoMarksAndNamesItsNeighbours() {
        Medicine vial = VialSketch.leuprolide("marks-100");
        assertEquals(Measuring.Hitch.BETWEEN_MARKS, hitch(vial, "0.28 mg"));
        assertEquals(Optional.of(Dose.parse("0.25 mg")), of(vial).nearestBelow(Dose.parse("0.28 mg")));
        assertEquals(Optional.of(Dose.parse("0.3 mg")), of(vial).nearestAbove(Dose.parse("0.28 mg")));
        assertEquals(Optional.empty(), of(vial).nearestBelow(Dose.parse("0.03 mg")));
        assertEquals(Optional.empty(), of(vial).measure(Dose.parse("0 mg")));
    }

    /** The last line of a hundred is 5 mg; beyond it there is none. */
    @Test
    void namesNoNeighbourBeyondTheLastLine() {
        Medicine vial = VialSketch.leuprolide("marks-100");
        assertEquals(Optional.of(Dose.parse("5 mg")), of(vial).nearestAbove(Dose.parse("4.97 mg")));
        assertEquals(Optional.empty(), of(vial).nearestAbove(Dose.parse("5 mg")));
        assertEquals("marks-100", of(vial).syringe().id());
    }

    /** 0.03 mL are 0.01 mg and 0.06 mL 0.02 mg; the lines between them are passed over. */
    @Test
    void passesOverLinesWithoutAnExactDose() {
        Measuring thirds = of(VialSketch.thirds());
        assertEquals(Optional.of(Dose.parse("0.02 mg")), thirds.nearestAbove(Dose.parse("0.011 mg")));
        assertEquals(Optional.of(Dose.parse("0.01 mg")), thirds.nearestBelow(Dose.parse("0.019 mg")));
    }

    @Test
    void measuresNothingForNoDose() {
        assertEquals(Optional.empty(), of(VialSketch.menotropin()).measure(Dose.parse("0 units")));
    }

    /** 40 mcg of 200 mcg in 1 mL are 0.2 mL, the 20 mark. */
    @Test
    void drawsADilutedDose() {
        assertEquals("1 vials, 0.2 mL, 20 mark, rest 0 mcg", measured(VialSketch.diluted(), "40 mcg"));
    }

    /** 10,000 units in 10 mL are 1,000 in 1 mL: 1,500 are 1.5 mL. */
    @Test
    void drawsFromTenThousandUnitsInTenMillilitres() {
        assertEquals("1 vials, 1.5 mL, 1.5 mark, rest 0 units", measured(VialSketch.hcg(), "1500 units"));
    }

    /** 24 doses of 0.2 mL are 4.8 mL; with 0.02 mL lost each time 5.28 mL. */
    @Test
    void countsWhatIsLostInHubAndNeedle() {
        Volume each = Volume.parse("0.2 mL").plus(Volume.parse("0.02 mL"));
        assertEquals(Volume.parse("5.28 mL"), each.times(24));
        assertEquals(
                24, VialLedger.reliableDoses(Volume.parse("5.28 mL"), Volume.parse("0.2 mL"), Volume.parse("0.02 mL")));
        assertEquals(
                23,
                VialLedger.reliableDoses(Volume.parse("5.279 mL"), Volume.parse("0.2 mL"), Volume.parse("0.02 mL")));
    }

    /** A 10 mL oil vial gives 9 doses of 1 mL that can be relied on, so 56 evenings need 7 vials. */
    @Test
    void reliesOnNineDosesOfTenMillilitres() {
        int nine = VialLedger.reliableDoses(Volume.parse("10 mL"), Volume.parse("1 mL"), Volume.parse("0.1 mL"));
        assertEquals(9, nine);
        assertEquals(7, (56 + nine - 1) / nine);
    }

    /** Nine evenings of 225 need 27 vials; of boxes of 5 that is 6, and 27 diluents come where 9 are used. */
    @Test
    void needsThreeVialsAnEvening() {
        int vials = Measuring.vials(VialSketch.menotropin(), Dose.parse("225 units"));
        assertEquals(27, 9 * vials);
        assertEquals(6, (27 + 4) / 5);
    }

    @Test
    void refusesAVolumeOnNoLine() {
        assertThrows(Refusal.class, () -> VialSketch.syringe("ml-1").markAt(Volume.parse("0.77 mL")));
        assertThrows(Refusal.class, () -> VialSketch.syringe("marks-50").markAt(Volume.parse("0.51 mL")));
    }
}

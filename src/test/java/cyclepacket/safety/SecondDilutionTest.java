package cyclepacket.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.VialSketch;
import cyclepacket.plan.Device;
import cyclepacket.plan.DilutedVial;
import cyclepacket.plan.Dilution;
import cyclepacket.quantity.Concentration;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Length;
import cyclepacket.quantity.Mark;
import cyclepacket.quantity.Volume;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

/** What a mark holds, worked by hand from stock and volumes. */
class SecondDilutionTest {
    private static DilutedVial vial(String stock, String take, String with, String strength, String syringe) {
        return new DilutedVial(
                new Dilution(
                        Concentration.parse(stock), Volume.parse(take), Volume.parse(with), Dilution.MadeBy.PHARMACY),
                Concentration.parse(strength),
                VialSketch.syringe(syringe),
                new Device.Needle(29, Length.parse("13 mm")),
                28);
    }

    private static SecondDilution at(String mark, DilutedVial vial) {
        return SecondDilution.at(new Mark(new BigDecimal(mark)), vial);
    }

    /** 0.4 mL of 5 mg in 1 mL are 2 mg, in 10 mL: the 20 mark is 0.2 mL and holds 0.04 mg. */
    @Test
    void turnsMilligramsIntoMicrograms() {
        SecondDilution twenty = at("20", vial("5 mg in 1 mL", "0.4 mL", "9.6 mL", "200 mcg in 1 mL", "marks-100"));
        assertTrue(twenty.gives(Dose.parse("40 mcg")));
        assertFalse(twenty.gives(Dose.parse("40.001 mcg")));
        assertEquals("40 mcg", twenty.words());
    }

    /** The same the other way round: 5,000 mcg in 1 mL, and the label counts in milligrams. */
    @Test
    void turnsMicrogramsIntoMilligrams() {
        SecondDilution twenty = at("20", vial("5000 mcg in 1 mL", "0.4 mL", "9.6 mL", "0.2 mg in 1 mL", "marks-100"));
        assertTrue(twenty.gives(Dose.parse("0.04 mg")));
        assertEquals("0.04 mg", twenty.words());
    }

    /** 1 mL of 10,000 units in 2 mL are 5,000, in 10 mL: 0.3 mL on a syringe that counts millilitres hold 150. */
    @Test
    void leavesOneUnitAsItIs() {
        SecondDilution line = at("0.3", vial("10000 units in 2 mL", "1 mL", "9 mL", "500 units in 1 mL", "ml-3"));
        assertTrue(line.gives(Dose.parse("150 units")));
        assertEquals("150 units", line.words());
    }

    /** Units and milligrams measure different things, so that no mark holds the dose. */
    @Test
    void namesNoAmountAcrossUnits() {
        SecondDilution line = at("0.3", vial("10000 units in 2 mL", "1 mL", "9 mL", "500 mcg in 1 mL", "ml-3"));
        assertFalse(line.gives(Dose.parse("150 mcg")));
        assertEquals("0 mcg", line.words());
        SecondDilution other = at("0.3", vial("10 mg in 2 mL", "1 mL", "9 mL", "500 units in 1 mL", "ml-3"));
        assertEquals("0 units", other.words());
        SecondDilution third = at("0.3", vial("10 mcg in 2 mL", "1 mL", "9 mL", "500 units in 1 mL", "ml-3"));
        assertEquals("0 units", third.words());
        SecondDilution fourth = at("0.3", vial("10000 units in 2 mL", "1 mL", "9 mL", "5 mg in 1 mL", "ml-3"));
        assertEquals("0 mg", fourth.words());
    }

    /** A third of a milligram: rounded to four figures, because it is only shown. */
    @Test
    void showsFourFigures() {
        SecondDilution line = at("1", vial("1 mg in 1 mL", "1 mL", "2 mL", "0.3 mg in 1 mL", "ml-3"));
        assertFalse(line.gives(Dose.parse("0.333 mg")));
        assertEquals("0.3333 mg", line.words());
    }
}

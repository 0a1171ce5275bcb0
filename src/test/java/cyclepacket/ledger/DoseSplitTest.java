package cyclepacket.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cyclepacket.plan.Dial;
import cyclepacket.plan.HouseRules.SplitDose;
import cyclepacket.quantity.Dose;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A dose above the dial's most is given in the fewest settings; nothing is rounded to make it fit. */
class DoseSplitTest {
    private static String split(String dose, String least, SplitDose rule) {
        Dial dial = new Dial(Dose.ofUnits(least), Dose.ofUnits("25"), Dose.ofUnits("450"));
        return DoseSplit.settings(Dose.ofUnits(dose), dial, rule).stream()
                .map(setting -> setting.number().toPlainString())
                .collect(Collectors.joining(" "));
    }

    /** 475 are 19 steps: 10 and 9. 925 are 37 steps in three settings of at most 18: 13, 12 and 12. */
    @ParameterizedTest
    @CsvSource({
        "25, 25, 25",
        "450, 450, 450",
        "475, 250 225, 450 25",
        "525, 275 250, 450 75",
        "900, 450 450, 450 450",
        "925, 325 300 300, 450 450 25"
    })
    void splitsByTheHouseRule(String dose, String equal, String fullDialFirst) {
        assertEquals(equal, split(dose, "25", SplitDose.EQUAL));
        assertEquals(fullDialFirst, split(dose, "25", SplitDose.FULL_DIAL_FIRST));
    }

    @ParameterizedTest
    @CsvSource({"0, 25", "510, 25", "50, 75", "9025, 25"})
    void givesNoSettingsForWhatTheDialCannotGive(String dose, String least) {
        assertEquals("", split(dose, least, SplitDose.EQUAL));
        assertEquals("", split(dose, least, SplitDose.FULL_DIAL_FIRST));
    }

    /** A part below the dial's least: 500 is 450 and 50, and 50 cannot be dialled. */
    @Test
    void refusesAPartBelowTheLeast() {
        assertEquals("", split("500", "75", SplitDose.FULL_DIAL_FIRST));
        assertEquals("450 75", split("525", "75", SplitDose.FULL_DIAL_FIRST));
    }

    @Test
    void givesTwentySettingsAndNoMore() {
        Dial dial = new Dial(Dose.ofUnits("25"), Dose.ofUnits("25"), Dose.ofUnits("450"));
        List<Dose> twenty = DoseSplit.settings(Dose.ofUnits("9000"), dial, SplitDose.EQUAL);
        assertEquals(20, twenty.size());
        assertEquals(List.of(Dose.ofUnits("450")), twenty.stream().distinct().toList());
    }
}

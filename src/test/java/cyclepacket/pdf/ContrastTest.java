package cyclepacket.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ratios: W3C, WCAG 2.1. 21 for black, 4.54 for #767676 are published in its documents; the others are computed by its formula. */
class ContrastTest {
    @ParameterizedTest
    @CsvSource({
        "#000000, #ffffff, 21.000",
        "#767676, #ffffff, 4.542",
        "#777777, #ffffff, 4.478",
        "#595959, #ffffff, 7.005",
        "#949494, #ffffff, 3.033",
        "#0000FF, #ffffff, 8.592",
        "#FF0000, #ffffff, 3.998",
        "#008000, #ffffff, 5.137",
        "#FFFF00, #ffffff, 1.074",
        "#B00020, #ffffff, 7.325",
        "#333333, #F2F2F2, 11.286"
    })
    void givesThePublishedRatio(String one, String other, double ratio) {
        assertEquals(ratio, Contrast.ratio(one, other), 0.0006);
        assertEquals(ratio, Contrast.ratio(other, one), 0.0006);
    }

    @Test
    void losesTheDifferenceThatIsOnlyInTheHue() {
        assertEquals(1, Contrast.ratioInGrey("#ff0000", "#008200"), 0.02);
        assertEquals(21, Contrast.ratioInGrey("#000", "#fff"), 0.001);
    }

    @Test
    void readsColoursOfAStyleSheet() {
        assertEquals(
                List.of("#000000", "#b00020"),
                Contrast.coloursIn("p { color: #000; border: 1pt solid #B00020 } i { color: #000000 }"));
        assertThrows(IllegalArgumentException.class, () -> Contrast.ratio("red", "#fff"));
    }
}

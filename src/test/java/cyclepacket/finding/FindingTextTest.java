package cyclepacket.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FindingTextTest {
    @Test
    void printsPlaceSentenceLineCaretAndMend() {
        Place place = new Place(
                "plans/patients/SM-04417.yaml", "/doses/fsh-pen/0/amount", 14, 26, "    - {from: S1, amount: 190}");
        Finding finding = Finding.stop(
                "DOSE-OFF-DIAL",
                place,
                "190 units is not a setting of this pen",
                "the dial has 187.5 and 200; ask the prescriber which one");
        assertEquals("""
                plans/patients/SM-04417.yaml:14:26: stop: 190 units is not a setting of this pen   [DOSE-OFF-DIAL]
                   14 |     - {from: S1, amount: 190}
                      |                          ^
                   mend: the dial has 187.5 and 200; ask the prescriber which one
                """, FindingText.print(List.of(finding)));
    }

    @Test
    void keepsTheCaretUnderItsCharacterForAnyLineNumberAndTab() {
        assertEquals(
                "f:7:3: warn: t   [C]\n    7 | a\tb\n      |  \t^\n   mend: m\n",
                print(Finding.warn("C", new Place("f", "", 7, 3, "a\tb"), "t", "m")));
        assertEquals(
                "f:1234:1: note: t   [C]\n   1234 | a\n        | ^\n   mend: m\n",
                print(Finding.note("C", new Place("f", "", 1234, 1, "a"), "t", "m")));
    }

    @Test
    void printsAFileWithoutALineAsAFile() {
        assertEquals("f: stop: t   [C]\n   mend: m\n", print(Finding.stop("C", Place.at("f", ""), "t", "m")));
    }

    @Test
    void cutsALongLineAroundTheCaret() {
        String line = "x".repeat(500) + "Y" + "z".repeat(500);
        String[] printed = print(Finding.stop("C", new Place("f", "", 1, 501, line), "t", "m"))
                .split("\n");
        assertEquals(printed[1].indexOf('Y'), printed[2].indexOf('^'));
        assertTrue(printed[1].length() < 160);
    }

    @Test
    void printsFiftyOfOneCodeAndCountsTheRest() {
        List<Finding> many = new ArrayList<>();
        for (int n = 1; n <= 52; n++) {
            many.add(Finding.stop("C", Place.at("f", "/" + n), "t" + n, "m"));
        }
        Finding other = Finding.warn("D", Place.at("f", ""), "u", "m");
        many.add(other);
        String shown = FindingText.printShort(many);
        assertTrue(shown.contains("t50   [C]"));
        assertFalse(shown.contains("t51   [C]"));
        assertTrue(shown.endsWith("   mend: m\n... and 2 more   [C]\n" + print(other)), shown);
    }

    @Test
    void printsAFullFiftyWithoutACount() {
        List<Finding> fifty = IntStream.range(0, 50)
                .mapToObj(n -> Finding.stop("C", Place.at("f", "/" + n), "t", "m"))
                .toList();
        assertEquals(FindingText.print(fifty), FindingText.printShort(fifty));
    }

    private static String print(Finding finding) {
        return FindingText.print(List.of(finding));
    }
}

package cyclepacket.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cyclepacket.finding.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;

class UsedStylesTest {
    private static final String BODY =
            "<div class='door wide'><p class='amount'>x</p><table><tr><td>y</td></tr></table></div>";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '^',
            value = {
                ".amount { margin: 0.75pt }                 | kept",
                ".door p.amount { margin: 0 }               | kept",
                ".wide > table td:first-child { top: 0 }    | kept",
                "p:after { content: 'a } b' }               | kept",
                "P.amount { top: 0 }                        | kept",
                "[alt='.none, x'] { top: 0 }                | kept",
                "#far { top: 0 }                            | kept",
                "* { top: 0 }                               | kept",
                "@page { margin: 0; @top-left { top: 0 } }  | kept",
                "@media print { .none { top: 0 } }          | kept",
                ".none { margin: 0 }                        | left out",
                ".door .none { margin: 0 }                  | left out",
                "ol { margin: 0 }                           | left out",
                "p.none { content: '}' }                    | left out",
                ".amounts { margin: 0 }                     | left out",
            })
    void keepsWhatSomeElementCanMeet(String rule, String fate) {
        String used = UsedStyles.of(page()).in(rule + "td { left: 0 }");
        assertEquals(fate.equals("kept") ? rule + "td { left: 0 }" : "td { left: 0 }", used.strip());
    }

    @Test
    void keepsTheMetOfSeveralSelectors() {
        assertEquals(
                "p, td{ top: 0 }",
                UsedStyles.of(page())
                        .in("ol, p, .none, td, h5 { top: 0 } /* p { } */")
                        .strip());
    }

    private static Document page() {
        return XhtmlReader.read(Samples.xhtml("", BODY), Place.at("a test", ""))
                .value()
                .orElseThrow();
    }
}

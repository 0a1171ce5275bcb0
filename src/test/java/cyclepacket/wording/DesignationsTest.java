package cyclepacket.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The Joint Commission's "Do Not Use" list (2018) and the ISMP list of error-prone designations (2021, 2024), by key. */
class DesignationsTest {
    private static final LanguageRules ENGLISH = rules("en");
    private static final LanguageRules SPANISH = rules("es");

    static LanguageRules rules(String language) {
        try {
            Path file = Path.of("templates/wording", language, LanguageRules.FILE);
            return LanguageRules.of(TextFile.parse(file.toString(), Files.readString(file)));
        } catch (java.io.IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }

    private static List<String> keys(String text, LanguageRules rules) {
        List<String> keys = new ArrayList<>();
        rules.designations().stream()
                .filter(form -> form.bad().matcher(text).find())
                .forEach(form -> keys.add(form.key()));
        return keys;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "unit-U|Dial 10U now",
                "unit-U|Dial 10 u now",
                "IU|Dial 5 IU now",
                "IU|Dial 5 I.U. now",
                "UI|Dial 5 UI now",
                "QD|Inject qd",
                "QD|Inject Q.D.",
                "QD|Inject OD",
                "QOD|Inject qod",
                "trailing-zero|Take 1.0 mg",
                "trailing-zero|Dial 150.0 units",
                "naked-decimal|Draw .5 mL",
                "ms|Give MSO4",
                "no-comma|Mix 10000 units",
                "million|Mix 5 M units",
                "million|Mix 10K units",
                "run-together|Take 10mg",
                "run-together|Dial 75units",
                "name-dose|follitropin75 units",
                "unit-dot|Take 5 mg. now",
                "micro|Take 5 µg",
                "micro|Take 5 μg",
                "micro|Take 5 ug",
                "nano|Take 5 ng",
                "cc|Draw 1 cc",
                "ml-case|Draw 1 ml",
                "subcut|Inject SC",
                "subcut|Inject sub q",
                "ij-in|For IJ use",
                "hs|Take it qhs",
                "hs|Take it nightly",
                "times|Take it BID",
                "times|Take it q6PM",
                "times|Go on x3d",
                "dc-ss-po|Take 1 per os",
                "dc-ss-po|D/C it",
                "at-amp|Wash & dry",
                "at-amp|Come @ 8:30",
                "gtlt|If <10 units",
                "gtlt|If >= 5 units",
                "slash-dose|Give 10 units/day",
                "hour-deg|Wait 2° then",
                "slashed-zero|Dial 1Ø",
                "fraction|Take ½ tablet",
                "abbrev|Your hCG shot",
                "abbrev|Your FSH pen"
            })
    void findsEachBadForm(String key, String text) {
        assertTrue(keys(text, ENGLISH).contains(key), text + ": " + keys(text, ENGLISH));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "187.5 units",
                "0.25 mg",
                "250 micrograms",
                "10,000 units",
                "0.5 mL",
                "100.4 °F (38 °C)",
                "1 unit",
                "Call +1 207 555 0142",
                "8:30 p.m. (20:30)",
                "Page 3 of 16",
                "issue 3, code W8FP-2XJC",
                "It must say mg.",
                "Draw to the 10 mark",
                "1.25 mg",
                "Inject under the skin",
                "in the day",
                "100 mg"
            })
    void leavesGoodFormsAlone(String text) {
        assertEquals(List.of(), keys(text, ENGLISH));
    }

    @Test
    void holdsSpanishToItsOwnThousands() {
        assertEquals(List.of(), keys("10\u00a0000 unidades", SPANISH));
        assertEquals(List.of("comma"), keys("10,000 unidades", SPANISH));
        assertEquals(List.of("no-comma"), keys("10000 unidades", SPANISH));
        assertTrue(keys("150 uds.", SPANISH).contains("u"));
    }

    /** Every key that a rule has is shown above to fire, so that none can rot. */
    @Test
    void showsEveryKeyToFire() throws Exception {
        TreeSet<String> shown = new TreeSet<>();
        CsvSource cases = DesignationsTest.class
                .getDeclaredMethod("findsEachBadForm", String.class, String.class)
                .getAnnotation(CsvSource.class);
        for (String line : cases.value()) {
            shown.add(line.split("\\|")[0]);
        }
        TreeSet<String> keys = new TreeSet<>();
        ENGLISH.designations().forEach(form -> keys.add(form.key()));
        assertEquals(keys, shown);
    }
}

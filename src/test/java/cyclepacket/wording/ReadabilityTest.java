package cyclepacket.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadabilityTest {
    /** Published: a sentence of 13 words and 24 syllables has grade 11.3 (Kincaid and others, Navy RBR 8-75, 1975). */
    @Test
    void agreesWithThePublishedSentence() {
        assertEquals(11.3, Readability.fleschKincaid(13, 1, 24), 0.05);
    }

    /** Published: one word of one syllable has the greatest ease, 121.22 (Flesch, J Appl Psychol 1948;32:221). */
    @Test
    void agreesWithThePublishedEnds() {
        assertEquals(121.22, Readability.fleschEase(1, 1, 1), 1e-9);
        assertEquals(-3.40, Readability.fleschKincaid(1, 1, 1), 1e-9);
    }

    /** Published: 95 and 110 long words in 30 sentences are grade 13 (McLaughlin, J Reading 1969;12:639); 64 are 11. */
    @ParameterizedTest
    @CsvSource({"95, 13", "110, 13", "64, 11", "100, 13", "0, 3"})
    void agreesWithThePublishedQuickRule(int longWords, int grade) {
        assertEquals(grade, Readability.smogQuick(longWords));
    }

    /** Figures of the npm packages flesch 2.0.1 and flesch-kincaid 2.0.1, run on these counts on Node 20.20 in 2026. */
    @ParameterizedTest
    @CsvSource({
        "13, 1, 24, 37.455384615384645, 11.264615384615386",
        "1, 1, 1, 121.22000000000003, -3.3999999999999986",
        "100, 10, 130, 86.70500000000001, 3.650000000000002",
        "100, 8, 150, 67.24750000000002, 6.985000000000003",
        "57, 7, 81, 78.34894736842108, 4.354135338345866",
        "312, 41, 398, 91.19186679174487, 2.430368980612883"
    })
    void agreesWithTheFleschPackages(int words, int sentences, int syllables, double ease, double grade) {
        assertEquals(ease, Readability.fleschEase(words, sentences, syllables), 1e-9);
        assertEquals(grade, Readability.fleschKincaid(words, sentences, syllables), 1e-9);
    }

    /** Figures of the npm package smog-formula 2.0.1, run on these counts on Node 20.20 in 2026. */
    @ParameterizedTest
    @CsvSource({
        "95, 30, 13.295006501635747",
        "64, 30, 11.473099999999999",
        "16, 30, 7.3011",
        "9, 30, 6.2581",
        "0, 30, 3.1291",
        "7, 41, 5.489589252717563"
    })
    void agreesWithTheSmogPackage(int longWords, int sentences, double grade) {
        assertEquals(grade, Readability.smog(longWords, sentences), 1e-9);
    }

    /** Worked from the printed formula 206.835 - 62.3 Y/W - W/S (Szigriszt-Pazos 1993): "normal" and "fairly easy". */
    @ParameterizedTest
    @CsvSource({"100, 5, 200, 62.235", "100, 10, 190, 78.465"})
    void agreesWithTheWorkedSpanishTexts(int words, int sentences, int syllables, double ease) {
        assertEquals(ease, Readability.inflesz(words, sentences, syllables), 1e-9);
    }
}

package cyclepacket.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The counters are rules of thumb; each has a list of the pages' own words, counted by hand, and an error budget. */
class SyllablesTest {
    private static Map<String, Integer> counted(String list) {
        Map<String, Integer> words = new TreeMap<>();
        for (String word : list.split(" ")) {
            words.put(word.replace("-", ""), word.split("-").length);
        }
        return words;
    }

    private static int off(Map<String, Integer> words, Syllables counter) {
        return words.entrySet().stream()
                .mapToInt(word -> Math.abs(counter.of(word.getKey()) - word.getValue()))
                .sum();
    }

    @Test
    void countsEnglishWithinFourPercent() {
        Map<String, Integer> words = counted("nee-dle car-tridge win-dow num-ber in-ject in-jec-tion eve-ning sy-ringe"
                + " con-tain-er phar-ma-cy med-i-cine plun-ger re-frig-er-a-tor dose tick washed emp-ty a-gain"
                + " re-triev-al cal-en-dar leaf-let but-ton trash bot-tle al-co-hol fold skin count slow-ly to-night"
                + " to-mor-row pack-et trav-el e-mer-gen-cy headache breath-ing swol-len ta-ble read pen tape close"
                + " used once twice be-fore af-ter units mi-cro-grams pow-der liq-uid");
        words.put("headache", 2);
        words.put("units", 2);
        int syllables = words.values().stream().mapToInt(Integer::intValue).sum();
        int off = off(words, Syllables.ENGLISH);
        assertTrue(off * 25 <= syllables, off + " of " + syllables);
    }

    /** Words that tell the rules apart: weak and strong vowels, accents, silent u, y alone. */
    @Test
    void countsSpanishExactlyOnItsList() {
        Map<String, Integer> words = counted("a-gu-ja car-tu-cho ven-ta-na plu-ma in-yec-ción día hoy que guí-e lé-a-lo"
                + " lea-mos u-ni-da-des far-ma-cia je-rin-ga pa-ño sie-te i-gual pin-güi-no ca-í-da re-ci-pien-te"
                + " vi-en-tre ó-vu-lo muy de-do ciu-dad lí-ne-a ma-íz a-ho-ra cua-tro");
        words.put("día", 2);
        words.put("leamos", 3);
        words.put("vientre", 2);
        words.forEach((word, count) -> assertEquals(count, Syllables.SPANISH.of(word), word));
    }

    @Test
    void countsAFigureAsOneWordOfOneSyllable() {
        assertEquals(1, Syllables.ENGLISH.of("187.5"));
        assertEquals(1, Syllables.SPANISH.of("20"));
    }
}

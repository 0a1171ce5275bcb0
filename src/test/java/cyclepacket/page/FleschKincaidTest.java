package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;

class FleschKincaidTest {
    /** Kincaid and others, Navy RBR 8-75, 1975; the sentence of 13 words, 1 sentence, 24 syllables is published at 11.3. */
    @Test
    void agreesWithThePublishedSentence() {
        assertEquals(11.264615, FleschKincaid.grade(13, 1, 24), 1e-6);
        assertEquals(37.455385, FleschKincaid.ease(13, 1, 24), 1e-6);
    }

    /** Flesch, J Appl Psychol 1948;32:221: one word of one syllable has the greatest ease. */
    @Test
    void hasTheKnownEnds() {
        assertEquals(121.22, FleschKincaid.ease(1, 1, 1), 1e-9);
        assertEquals(-3.40, FleschKincaid.grade(1, 1, 1), 1e-9);
    }

    /** Worked from the formula. */
    @Test
    void agreesWithTwoWorkedTexts() {
        assertEquals(3.650, FleschKincaid.grade(100, 10, 130), 1e-9);
        assertEquals(6.985, FleschKincaid.grade(100, 8, 150), 1e-9);
    }

    /** The counter is a rule of thumb: over this list it may be off by three syllables in all. */
    @Test
    void countsSyllablesOfTheWordsOnThePages() {
        Map<String, Integer> known = Map.ofEntries(
                Map.entry("needle", 2),
                Map.entry("cartridge", 2),
                Map.entry("window", 2),
                Map.entry("number", 2),
                Map.entry("inject", 2),
                Map.entry("injection", 3),
                Map.entry("evening", 2),
                Map.entry("syringe", 2),
                Map.entry("container", 3),
                Map.entry("pharmacy", 3),
                Map.entry("medicine", 3),
                Map.entry("plunger", 2),
                Map.entry("refrigerator", 5),
                Map.entry("dose", 1),
                Map.entry("tick", 1),
                Map.entry("washed", 1),
                Map.entry("empty", 2),
                Map.entry("again", 2),
                Map.entry("retrieval", 3),
                Map.entry("calendar", 3));
        int off = known.entrySet().stream()
                .mapToInt(word -> Math.abs(FleschKincaid.syllables(word.getKey()) - word.getValue()))
                .sum();
        assertTrue(off <= 3, "off by " + off);
    }
}

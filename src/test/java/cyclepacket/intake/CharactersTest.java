package cyclepacket.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CharactersTest {
    @ParameterizedTest
    @ValueSource(
            ints = {0, 7, 0x1B, 0x7F, 0x85, 0xAD, 0x200B, 0x2028, 0x202A, 0x202E, 0x2066, 0x2069, 0xFEFF, 0xFFFE, 0xD800
            })
    void refusesWhatSteersTurnsOrHides(int codePoint) {
        assertTrue(Characters.isRefused(codePoint));
    }

    @ParameterizedTest
    @ValueSource(ints = {'a', ' ', '\n', '\r', '\t', 0xA0, 0xE9, 0x3B1, 0x5D0, 0x627, 0x4E2D, 0x200D, 0x1F600})
    void takesLettersOfEveryScript(int codePoint) {
        assertFalse(Characters.isRefused(codePoint));
    }

    @Test
    void showsRefusedCharactersAsQuestionMarksInTheSameColumns() {
        assertEquals("a?b?c", Characters.shown("a\u001Bb\u202Ec"));
    }

    @Test
    void quotesAValueOnOneShortLine() {
        assertEquals("\"a b c\"", Characters.quoted("a\nb\tc"));
        assertEquals('"' + "x".repeat(40) + "...\"", Characters.quoted("x".repeat(41)));
        assertEquals('"' + "x".repeat(40) + '"', Characters.quoted("x".repeat(40)));
    }
}

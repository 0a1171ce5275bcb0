package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CheckedCodeTest {
    private static String code(String... parts) {
        return CheckedCode.over(Arrays.stream(parts)
                .map(part -> part.getBytes(StandardCharsets.UTF_8))
                .toList());
    }

    @Test
    void looksTheSameEachTime() {
        assertEquals(code("plan", "clinic"), code("plan", "clinic"));
        assertTrue(code("plan").matches("[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{3}"));
    }

    @Test
    void countsWhereOnePartEnds() {
        assertNotEquals(code("ab", "c"), code("a", "bc"));
    }

    @Test
    void findsAnyOneWrongSymbolAndAnyTwoSwapped() {
        String right = code("a plan").replace("-", "");
        assertTrue(CheckedCode.hasRightCheck(right));
        Set<String> wrong = new HashSet<>();
        for (int at = 0; at < right.length(); at++) {
            for (char symbol : "0123456789ABCDEFGHJKMNPQRSTVWXYZ".toCharArray()) {
                wrong.add(right.substring(0, at) + symbol + right.substring(at + 1));
            }
            if (at > 0) {
                wrong.add(
                        right.substring(0, at - 1) + right.charAt(at) + right.charAt(at - 1) + right.substring(at + 1));
            }
        }
        wrong.remove(right);
        assertEquals(
                List.of(), wrong.stream().filter(CheckedCode::hasRightCheck).toList());
        assertFalse(CheckedCode.hasRightCheck("not a code"));
    }

    /** Source of the example: Crockford's description of base 32, value 1234 is 16J with the check symbol D. */
    @Test
    void usesCrockfordsCheckSymbol() {
        assertTrue(CheckedCode.hasRightCheck("000000016JD"));
        assertFalse(CheckedCode.hasRightCheck("000000016JE"));
    }
}

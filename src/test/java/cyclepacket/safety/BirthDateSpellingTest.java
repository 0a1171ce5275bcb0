package cyclepacket.safety;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BirthDateSpellingTest {
    private final BirthDateSpelling born = new BirthDateSpelling(LocalDate.of(1990, 4, 7));

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1990-04-07",
                "07.04.1990",
                "4/7/90",
                "7/4/1990",
                "19900407",
                "070490",
                "07 04 1990",
                "April 7th, 1990",
                "7 Apr 1990",
                "07APR1990",
                "7th of April 1990",
                "\uFF11\uFF19\uFF19\uFF10\uFF10\uFF14\uFF10\uFF17",
                "\u0661\u0669\u0669\u0660-\u0660\u0664-\u0660\u0667"
            })
    void knowsTheDateInAnySpelling(String text) {
        assertTrue(born.matches(text), text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "7730418",
                "1990-04-08",
                "1990-05-07",
                "1990",
                "19900407-1234",
                "7490",
                "A 19900407",
                "7 May 1990",
                "7 Ap 1990",
                "07-04",
                "99999999999999999999-04-07",
                "---",
                ""
            })
    void letsOtherNumbersPass(String text) {
        assertFalse(born.matches(text), text);
    }
}

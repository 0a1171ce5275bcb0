package cyclepacket.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhrasesTest {
    @ParameterizedTest
    @CsvSource({"0, 0 h", "59, 0 h 59 min", "60, 1 h", "1950, 32 h 30 min", "-60, minus 1 h", "-1, minus 0 h 1 min"})
    void saysMinutesInHours(long minutes, String words) {
        assertEquals(words, Phrases.hours(minutes));
    }

    @ParameterizedTest
    @CsvSource({"0, 0 days", "1, 1 day", "2, 2 days"})
    void countsOneAndMany(long number, String words) {
        assertEquals(words, Phrases.count(number, "day"));
    }

    @ParameterizedTest
    @CsvSource({"'  Evening   PEN ', evening pen", "'T.\tOkonjo', t. okonjo"})
    void readsTheSameWordsHoweverTheyWereTyped(String typed, String plain) {
        assertEquals(plain, Phrases.plain(typed));
    }
}

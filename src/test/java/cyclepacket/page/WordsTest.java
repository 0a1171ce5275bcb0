package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseRange;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {
    private static final Wording ENGLISH = Wording.load(DemoPlan.TEMPLATES, "en");
    private static final Words WORDS = Words.of(ENGLISH);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "187.5 units|187.5 units",
                "150.0 units|150 units",
                "1 units|1 unit",
                "0.25 mg|0.25 mg",
                "250 mcg|250 micrograms",
                "1250 units|1,250 units",
                "1000000 units|1,000,000 units",
                "999 units|999 units",
                "10000.5 units|10,000.5 units"
            })
    void writesAmountsWithoutTrailingZerosAndWithCommas(String dose, String read) {
        assertEquals(read.replace(' ', '\u00a0'), WORDS.amounts().amount(Dose.parse(dose)));
    }

    @Test
    void keepsARangeOnOneLine() {
        DoseRange range = new DoseRange(Dose.ofUnits("37.5"), Dose.ofUnits("150"));
        assertEquals("37.5\u00a0to\u00a0150\u00a0units", WORDS.amounts().range(range));
        assertEquals("75\u00a0units", WORDS.amounts().range(DoseRange.exactly(Dose.ofUnits("75"))));
    }

    @ParameterizedTest
    @CsvSource({
        "00:00, 12:00 midnight (00:00)",
        "12:00, 12:00 noon (12:00)",
        "00:05, 12:05 a.m. (00:05)",
        "07:30, 7:30 a.m. (07:30)",
        "12:30, 12:30 p.m. (12:30)",
        "19:30, 7:30 p.m. (19:30)",
        "23:59, 11:59 p.m. (23:59)"
    })
    void writesBothClocks(String time, String read) {
        assertEquals(read.replace(' ', '\u00a0'), WORDS.clock().time(LocalTime.parse(time)));
    }

    @Test
    void namesDaysInItsOwnWordsInAnyLocale() {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
        try {
            assertEquals(
                    "Friday\u00a012\u00a0March",
                    WORDS.clock().day(LocalDate.of(2027, 3, 12)).full());
            assertEquals("8:30\u00a0p.m.\u00a0(20:30)", WORDS.clock().time(LocalTime.of(20, 30)));
            assertEquals("17\u00a0April\u00a01990", WORDS.clock().dateAndYear(LocalDate.of(1990, 4, 17)));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void namesAZoneByTheLanguageOrItsCity() {
        assertEquals("Eastern time (New York)", WORDS.clock().zone(ZoneId.of("America/New_York")));
        assertEquals("Hong\u00a0Kong time", WORDS.clock().zone(ZoneId.of("Asia/Hong_Kong")));
    }

    /** 38 degrees Celsius is 100.4 Fahrenheit: common practice, no published source; the arithmetic is exact. */
    @Test
    void spellsOutTheClinicsLimits() {
        ThresholdWords limits = new ThresholdWords(WORDS);
        assertEquals("2\u00a0pounds in 24\u00a0hours", limits.plain("2 lb in 24 h"));
        assertEquals("100.4\u00a0°F\u00a0(38\u00a0°C)", limits.temperature("100.4 F"));
        assertEquals("100.4\u00a0°F\u00a0(38\u00a0°C)", limits.temperature("38 C"));
        assertEquals("warm to the touch", limits.temperature("warm to the touch"));
    }

    @Test
    void refusesAGapWithoutAValueAndAKeyThatIsNotThere() {
        assertThrows(TemplateFault.class, () -> ENGLISH.fill("door.title", Map.of()));
        assertThrows(TemplateFault.class, () -> ENGLISH.text("no.such.key"));
        assertThrows(TemplateFault.class, () -> Wording.load(DemoPlan.TEMPLATES, "no-such-language"));
    }
}

package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cyclepacket.quantity.Dose;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers, days and plural forms against ICU's data: those of the source are held to them, others are taken from them. */
class IcuWordsTest {
    private static final Tongue SOURCE = Wording.load(DemoPlan.TEMPLATES, "en").tongue();
    private static final Tongue BRITISH = new IcuTongue("en-GB", Optional.empty());
    private static final Tongue AMERICAN = new IcuTongue("en-US", Optional.empty());
    private static final Words SPANISH = Words.of(Wording.load(DemoPlan.TEMPLATES, "es"));

    @Test
    void writesEnglishNumbersAndFormsAsIcuDoes() {
        Random random = new Random(7);
        for (int run = 0; run < 2000; run++) {
            BigDecimal number = BigDecimal.valueOf(random.nextInt(5_000_000), random.nextInt(4))
                    .stripTrailingZeros();
            BigDecimal plain = number.scale() < 0 ? number.setScale(0) : number;
            assertEquals(AMERICAN.number(plain), SOURCE.number(plain));
            assertEquals(AMERICAN.plural(plain), SOURCE.plural(plain), plain.toPlainString());
        }
    }

    /** Day before month, as the pages are written; ICU has that order for British English. */
    @Test
    void writesEnglishDaysAsIcuDoes() {
        for (LocalDate day = LocalDate.of(2027, 1, 1); day.getYear() < 2029; day = day.plusDays(1)) {
            assertEquals(BRITISH.date(day), SOURCE.date(day));
            assertEquals(BRITISH.dateAndYear(day), SOURCE.dateAndYear(day));
            assertEquals(BRITISH.weekday(day), SOURCE.weekday(day));
            assertEquals(AMERICAN.shortWeekday(day), SOURCE.shortWeekday(day));
            assertEquals(BRITISH.day(day).replace(",", ""), SOURCE.day(day));
        }
    }

    @Test
    void writesEnglishHoursAsIcuDoesButForTheDots() {
        for (int minute = 0; minute < 24 * 60; minute++) {
            LocalTime time = LocalTime.MIDNIGHT.plusMinutes(minute);
            String icu = AMERICAN.twelve(time).replace('\u202f', ' ').replace('\u00a0', ' ');
            assertEquals(icu.replace("AM", "a.m.").replace("PM", "p.m."), SOURCE.twelve(time));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "187.5 units|187.5 unidades",
                "1 units|1 unidad",
                "0.5 units|0.5 unidades",
                "0.25 mg|0.25 mg",
                "250 mcg|250 microgramos",
                "10000 units|10 000 unidades"
            })
    void writesSpanishAmountsWithThePointOfThePen(String dose, String read) {
        assertEquals(read.replace(' ', '\u00a0'), SPANISH.amounts().amount(Dose.parse(dose)));
    }

    @Test
    void writesSpanishDaysHoursAndLists() {
        LocalDate friday = LocalDate.of(2027, 3, 12);
        assertEquals(
                "viernes,\u00a012\u00a0de\u00a0marzo",
                SPANISH.clock().day(friday).full());
        assertEquals("vie", SPANISH.clock().day(friday).shortWeekday());
        assertEquals("12\u00a0de\u00a0marzo\u00a0de\u00a02027", SPANISH.clock().dateAndYear(friday));
        assertEquals("8:30\u00a0p.m.\u00a0(20:30)", SPANISH.clock().time(LocalTime.of(20, 30)));
        assertEquals("pluma, jeringa e insertos", SPANISH.all(List.of("pluma", "jeringa", "insertos")));
        assertEquals("caja 7 u 8", SPANISH.either(List.of("caja 7", "8")));
        assertEquals(DayOfWeek.FRIDAY, friday.getDayOfWeek());
    }

    /** Polish has a form for few and one for many; the program asks for them by Unicode's names. */
    @Test
    void knowsFormsThatTheSourceDoesNotHave() {
        Tongue polish = new IcuTongue("pl", Optional.empty());
        assertEquals("one", polish.plural(BigDecimal.ONE));
        assertEquals("few", polish.plural(BigDecimal.valueOf(3)));
        assertEquals("many", polish.plural(BigDecimal.valueOf(5)));
    }
}

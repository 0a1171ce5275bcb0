package cyclepacket.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MoneyTest {
    @Test
    void addsToTheHundredth() {
        Money sum = price("315.5").plus(price("0.05"));
        assertEquals(31_555, sum.hundredths());
        assertEquals("315.55", sum.toString());
        assertEquals(new BigDecimal("1000"), price("1000.00").number());
    }

    @Test
    void takesTwoDecimalsAndNineDigitsAtTheMost() {
        assertEquals(99_999_999_999L, price("999999999.99").hundredths());
        assertEquals(0, price("0").hundredths());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.001", "1000000000", "1e9", "-0.01"})
    void refusesWhatIsNoPrice(String number) {
        assertThrows(Refusal.class, () -> price(number));
    }

    private static Money price(String number) {
        return Money.of(new BigDecimal(number));
    }
}

package cyclepacket.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Source of the Fahrenheit values: USP 659 (refrigerator 2-8 C is 36-46 F, controlled room 20-25 C is 68-77 F). */
class TemperatureRangeTest {
    @ParameterizedTest
    @CsvSource({"2-8 C, 36, 46", "20-25 C, 68, 77", "15-30 C, 59, 86", "-25--10 C, -13, 14", "8-15 C, 46, 59"})
    void showsBothScales(String text, int least, int most) {
        TemperatureRange range = TemperatureRange.parse(text);
        assertEquals(least, range.leastFahrenheit());
        assertEquals(most, range.mostFahrenheit());
        assertEquals(range, TemperatureRange.parse(range.toString()));
    }

    /** USP 659: a refrigerator is 2 to 8 C; a cool place is 8 to 15 C, and what is kept cool may be refrigerated. */
    @ParameterizedTest
    @CsvSource({
        "2-8 C, true, true",
        "2-9 C, false, true",
        "8-15 C, false, true",
        "9-15 C, false, false",
        "20-25 C, false, false"
    })
    void knowsWhatBelongsInARefrigerator(String text, boolean needs, boolean allows) {
        TemperatureRange range = TemperatureRange.parse(text);
        assertEquals(needs, range.needsRefrigerator());
        assertEquals(allows, range.allowsRefrigerator());
    }

    @Test
    void reachesFromADeepFreezerToAHotRoom() {
        assertEquals(new TemperatureRange(-90, 60), TemperatureRange.parse("-90-60 C"));
        assertThrows(Refusal.class, () -> new TemperatureRange(-91, 8));
        assertThrows(Refusal.class, () -> new TemperatureRange(2, 61));
    }

    @ParameterizedTest
    @ValueSource(strings = {"8-2 C", "8-8 C", "2-8", "2-8 F", "cold", "2-99 C", "2 - 8 C"})
    void refusesOtherForms(String text) {
        assertThrows(Refusal.class, () -> TemperatureRange.parse(text));
    }
}

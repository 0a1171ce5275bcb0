package cyclepacket.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {
    @Test
    void readsMillimetres() {
        assertEquals(12_700, Length.parse("12.7 mm").micrometres());
        assertEquals("8 mm", Length.parse("8.0 mm").toString());
        assertEquals("10 mm", new Length(10_000).toString());
        assertEquals(1, Length.parse("0.001 mm").micrometres());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 mm", "8", "8 cm", "1/2 in", "-8 mm", "8.0001 mm", "12345 mm"})
    void refusesWhatIsNoLength(String text) {
        assertThrows(Refusal.class, () -> Length.parse(text));
    }
}

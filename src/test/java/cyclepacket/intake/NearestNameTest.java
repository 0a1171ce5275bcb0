package cyclepacket.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearestNameTest {
    private static final List<String> KEYS = List.of("patient", "paper", "plan", "zone", "order");

    @Test
    void countsLettersAddedDroppedChangedAndSwapped() {
        assertEquals(0, NearestName.distance("zone", "Zone"));
        assertEquals(1, NearestName.distance("zone", "zones"));
        assertEquals(1, NearestName.distance("zone", "zne"));
        assertEquals(1, NearestName.distance("zone", "zome"));
        assertEquals(1, NearestName.distance("zone", "zoen"));
        assertEquals(4, NearestName.distance("", "zone"));
        assertEquals(3, NearestName.distance("kitten", "sitting"));
    }

    @Test
    void suggestsALikelySlip() {
        assertEquals(Optional.of("patient"), NearestName.of("pateint", KEYS));
        assertEquals(Optional.of("zone"), NearestName.of("zon", KEYS));
        assertEquals(Optional.of("order"), NearestName.of("Order", KEYS));
    }

    @Test
    void suggestsNothingForWhatCouldBeAnything() {
        assertEquals(Optional.empty(), NearestName.of("weight", KEYS));
        assertEquals(Optional.empty(), NearestName.of("Q", List.of("R", "S1", "T")));
        assertEquals(Optional.empty(), NearestName.of("P1", List.of("R", "S1", "T")));
        assertEquals(Optional.of("S1"), NearestName.of("s1", List.of("R", "S1", "T")));
    }

    /** Six letters may hold two slips: two letters may be missing or too many, and not three. */
    @Test
    void takesLettersThatAreMissingForSlips() {
        assertEquals(Optional.of("parcel"), NearestName.of("parcelxy", List.of("parcel")));
        assertEquals(Optional.of("pracelxy"), NearestName.of("pracel", List.of("pracelxy")));
        assertEquals(Optional.empty(), NearestName.of("pracel", List.of("pracelxyz")));
        assertEquals(Optional.empty(), NearestName.of("pracel", List.of("pra")));
    }

    @Test
    void takesTheFirstInTheAlphabetOfTwoEquallyNear() {
        assertEquals(Optional.of("fsh-pem"), NearestName.of("fsh-pe", List.of("fsh-pen", "fsh-pem")));
    }

    @Test
    void asksOrListsTheChoices() {
        assertEquals("did you mean zone?", NearestName.mend("zoen", KEYS));
        assertEquals("use one of owed, left", NearestName.mend("shown", List.of("owed", "left")));
        assertEquals("use en", NearestName.mend("es", List.of("en")));
        assertEquals("remove it", NearestName.mend("es", List.of()));
        assertEquals("remove it", NearestName.mend("x", List.of("1a", "2a", "3a", "4a", "5a", "6a", "7a", "8a", "9a")));
    }
}

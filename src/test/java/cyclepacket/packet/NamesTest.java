package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NamesTest {
    private static final String PREPARER = "T. Okonjo (invented)";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "T. Okonjo",
                "t okonjo",
                "Okonjo, T.",
                "T.\u2011Okonjo",
                "\uFF34. Okonjo",
                "Tunde Okonjo",
                " T.  OKONJO (night shift)"
            })
    void knowsThePreparerAgain(String name) {
        assertTrue(Names.areSamePerson(name, PREPARER));
        assertTrue(Names.areSamePerson(PREPARER, name));
    }

    @ParameterizedTest
    @ValueSource(strings = {"R. Okonjo", "T. Okonja", "T. A. Okonjo", "R. Lindqvist (invented)"})
    void tellsAnotherPersonApart(String name) {
        assertFalse(Names.areSamePerson(name, PREPARER));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "(nobody)", "12", "Eve\nmore: true", "."})
    void asksForAName(String name) {
        assertFalse(Names.isName(name));
    }
}

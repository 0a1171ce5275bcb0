package cyclepacket.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cyclepacket.intake.Tree.Kind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EmptySource;
import org.junit.jupiter.params.provider.ValueSource;

class ScalarKindTest {
    @ParameterizedTest
    @ValueSource(strings = {"0", "-0", "7", "187.5", "0.25", "600.0", "-12", "1e2", "25e-2", "2.5E+2", "1234567890"})
    void takesJsonNumbersAsNumbers(String written) {
        assertEquals(Kind.NUMBER, ScalarKind.ofPlain(written));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "010",
                "1_000",
                "+5",
                ".5",
                "5.",
                "1e",
                "1e+",
                "0x1F",
                "0o17",
                "20:30",
                "2027-03-09",
                "1,5",
                "-",
                "--1",
                ".nan",
                ".inf",
                "1e9999999999",
                "1e31",
                "1 000",
                "١٢",
                "12345678901234567890123456789012345678901"
            })
    void keepsEverythingElseAsText(String written) {
        assertEquals(Kind.TEXT, ScalarKind.ofPlain(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"no", "yes", "on", "off", "True", "TRUE", "False", "y", "n"})
    void keepsWordsThatOtherReadersTakeForTruthAsText(String written) {
        assertEquals(Kind.TEXT, ScalarKind.ofPlain(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"true", "false"})
    void takesTrueAndFalseInSmallLetters(String written) {
        assertEquals(Kind.TRUTH, ScalarKind.ofPlain(written));
    }

    @ParameterizedTest
    @EmptySource
    @ValueSource(strings = {"~", "null", "Null", "NULL"})
    void takesTheWordsForNothingAsNothing(String written) {
        assertEquals(Kind.NOTHING, ScalarKind.ofPlain(written));
    }
}

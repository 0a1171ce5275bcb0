package cyclepacket.quantity;

import java.util.Arrays;
import java.util.Optional;

/** The unit that one medicine is ordered in; amounts in different units never mix. */
public enum DoseUnit {
    UNITS("units"),
    MCG("mcg"),
    MG("mg");

    private final String word;

    DoseUnit(String word) {
        this.word = word;
    }

    /** The word used in files, for example {@code units}. */
    public String word() {
        return word;
    }

    public static Optional<DoseUnit> ofWord(String word) {
        return Arrays.stream(values()).filter(unit -> unit.word.equals(word)).findFirst();
    }
}

package cyclepacket.plan;

import cyclepacket.quantity.Refusal;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * The short name of a named day: letters, or letters and 1 for a day that is itself counted as the first.
 *
 * @param code for example {@code S1}, {@code CD1}, {@code T} or {@code R}
 */
public record Anchor(String code) {
    private static final Pattern FORM = Pattern.compile("[A-Z]{1,3}1?");

    public static final Anchor S1 = new Anchor("S1");
    public static final Anchor CD1 = new Anchor("CD1");
    public static final Anchor T = new Anchor("T");
    public static final Anchor R = new Anchor("R");

    public Anchor {
        Objects.requireNonNull(code, "code");
        if (!FORM.matcher(code).matches()) {
            throw new Refusal(
                    "\"" + code + "\" is not an anchor", "write capital letters, for example S1, CD1, T or R");
        }
    }

    /** An anchor such as S1, whose later days are counted from it: S2, S3. */
    public boolean isCounted() {
        return code.endsWith("1");
    }

    @Override
    public String toString() {
        return code;
    }
}

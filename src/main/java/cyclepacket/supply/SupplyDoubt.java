package cyclepacket.supply;

import java.util.Objects;

/**
 * Why something about the supply of one medicine could not be worked out.
 *
 * @param subject the size or amount it is about, as written in the files
 */
public record SupplyDoubt(Kind kind, String subject) {
    public SupplyDoubt {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(subject, "subject");
    }

    /** What is in the way. */
    public enum Kind {
        /** Some sizes have a price and this one has none: costs cannot be compared. */
        PRICE_MISSING,
        /** No size as sold gives this amount. */
        NO_SIZE,
        /** The need takes more containers than anybody would buy. */
        TOO_MANY
    }
}

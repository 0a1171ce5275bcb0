package cyclepacket.plan;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * A medicine without a needle, in pieces of one size.
 *
 * @param way where it goes
 * @param piece what one is called
 * @param halves whether a piece may be halved
 */
public record Taken(Way way, Piece piece, boolean halves) implements Device {
    public Taken {
        Objects.requireNonNull(way, "way");
        Objects.requireNonNull(piece, "piece");
    }

    /** Where it goes. */
    public enum Way {
        MOUTH,
        VAGINA,
        SKIN,
        NOSE
    }

    /** What one piece is called. */
    public enum Piece {
        TABLET,
        CAPSULE,
        INSERT,
        GEL,
        PATCH,
        SPRAY;

        /** The word of the file format. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Override
    public String word() {
        return "taken";
    }

    @Override
    public Optional<CartridgePen> pen() {
        return Optional.empty();
    }

    @Override
    public Optional<Taken> taken() {
        return Optional.of(this);
    }
}

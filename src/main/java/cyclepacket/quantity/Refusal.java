package cyclepacket.quantity;

import java.util.Objects;

/**
 * A value that a record cannot hold: what is wrong, and how to mend it. The reader of the files turns it into a
 * finding at the place the value came from.
 */
public final class Refusal extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String mend;

    public Refusal(String text, String mend) {
        super(Objects.requireNonNull(text, "text"));
        this.mend = Objects.requireNonNull(mend, "mend");
    }

    /** What the writer of the file can do about it, in one line without a full stop. */
    public String mend() {
        return mend;
    }
}

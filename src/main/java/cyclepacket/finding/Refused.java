package cyclepacket.finding;

import java.util.Objects;

/** Ends a run with one finding of grade stop, where no list of findings can be handed up. */
public class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Finding finding;

    /** @param cause what went wrong underneath, for whoever mends it; null when nothing did */
    protected Refused(Finding finding, Throwable cause) {
        super(finding.place().file() + ": " + finding.text(), cause);
        this.finding = Objects.requireNonNull(finding, "finding");
    }

    /** What to tell. */
    public Finding finding() {
        return finding;
    }
}

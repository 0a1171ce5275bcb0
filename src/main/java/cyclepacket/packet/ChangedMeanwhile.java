package cyclepacket.packet;

import java.io.IOException;
import java.nio.file.Path;

/** Somebody else wrote the plan after it was read here; nothing of this run was written. */
public final class ChangedMeanwhile extends IOException {
    private static final long serialVersionUID = 1L;

    ChangedMeanwhile(Path plan) {
        super("Somebody else changed " + plan
                + " after it was read here. Nothing of this run was written. Start again.");
    }
}

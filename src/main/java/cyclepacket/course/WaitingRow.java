package cyclepacket.course;

import cyclepacket.plan.Anchor;
import java.util.Objects;

/**
 * A row of the protocol that has no days yet, because its anchor is told on the phone.
 *
 * @param row which row of the protocol, from 0
 * @param anchor the anchor that it waits for
 */
public record WaitingRow(int row, String medicine, Anchor anchor) {
    public WaitingRow {
        Objects.requireNonNull(medicine, "medicine");
        Objects.requireNonNull(anchor, "anchor");
    }
}

package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * The first page.
 *
 * @param tonight the first evening that is still ahead and has an injection
 * @param visit the next visit to the clinic
 * @param parts the parts of this packet and what each is for
 */
public record StartView(Optional<Tonight> tonight, Optional<Visit> visit, List<Part> parts) {
    public StartView {
        parts = List.copyOf(parts);
    }

    /**
     * What to do next.
     *
     * @param doorNames what to take, by the names of the door page
     * @param callFirst true when this evening waits for a call
     */
    public record Tonight(DayName day, String time, List<String> doorNames, boolean callFirst) {
        public Tonight {
            doorNames = List.copyOf(doorNames);
        }
    }

    /** A visit to the clinic. */
    public record Visit(DayName day, String time, String what) {}

    /** One part: the key of its wording and the anchor that its page number is taken from. */
    public record Part(String key, String anchor) {}
}

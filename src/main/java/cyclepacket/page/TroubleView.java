package cyclepacket.page;

import java.util.List;

/**
 * Facts for the pages of trouble and calls.
 *
 * @param missed the clinic's own line for each medicine, word for word
 * @param weightGain the clinic's limit, for example {@code 2 pounds in 24 hours}
 * @param fever the clinic's limit in both scales
 */
public record TroubleView(List<Missed> missed, String weightGain, String fever, boolean pen, boolean cold) {
    public TroubleView {
        missed = List.copyOf(missed);
    }

    /** What to do when a dose of this medicine was missed or is late. */
    public record Missed(String medicine, String doorName, String line) {}
}

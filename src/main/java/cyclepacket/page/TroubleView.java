package cyclepacket.page;

import java.util.List;
import java.util.Optional;

/**
 * Facts for the pages of trouble and calls.
 *
 * @param missed the clinic's own line for each medicine, word for word
 * @param weightGain the clinic's limit, for example {@code 2 pounds in 24 hours}
 * @param fever the clinic's limit in both scales
 * @param exactName the door name, with a capital, of what is given at an exact minute
 * @param pen true when there is a pen with cartridges
 */
public record TroubleView(
        List<Missed> missed,
        Optional<String> weightGain,
        Optional<String> fever,
        Optional<String> exactName,
        boolean pen) {
    public TroubleView {
        missed = List.copyOf(missed);
    }

    /** What to do when a dose of these medicines was missed or is late; {@code who} names them all. */
    public record Missed(String who, String line) {}
}

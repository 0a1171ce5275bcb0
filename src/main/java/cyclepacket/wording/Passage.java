package cyclepacket.wording;

import cyclepacket.finding.Place;
import java.util.Objects;
import java.util.function.Function;

/**
 * A stretch of text to be judged.
 *
 * @param isRunning whether it is sentences, and not a heading, a table cell or a label
 * @param places where given words of it stand
 */
public record Passage(String text, boolean isRunning, Function<String, Place> places) {
    public Passage {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(places, "places");
    }
}

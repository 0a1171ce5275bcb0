package cyclepacket.packet;

import java.util.Objects;
import java.util.function.Predicate;

/**
 * One value that the second person keys in again, from the order and the call note and not from the page.
 *
 * @param asks what is asked, with the form of the answer; never the answer
 * @param names what a mismatch calls it
 * @param matches whether an answer is the plan's value
 */
public record Question(String asks, String names, Predicate<String> matches) {
    public Question {
        Objects.requireNonNull(asks, "asks");
        Objects.requireNonNull(names, "names");
        Objects.requireNonNull(matches, "matches");
    }
}

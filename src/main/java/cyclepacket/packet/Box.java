package cyclepacket.packet;

import cyclepacket.intake.FlowLine;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * A box, or several alike, that came to the patient.
 *
 * @param size the amount on the box, as it was typed
 * @param received the day it came
 */
public record Box(
        String size, Optional<Integer> count, Optional<String> lot, Optional<LocalDate> expires, LocalDate received) {
    public Box {
        Objects.requireNonNull(count, "count");
        Objects.requireNonNull(lot, "lot");
        Objects.requireNonNull(expires, "expires");
        Objects.requireNonNull(received, "received");
        Happening.requireAmount(size);
    }

    String line() {
        FlowLine line = new FlowLine().plain("size", size);
        count.filter(number -> number > 1).ifPresent(number -> line.plain("count", number));
        lot.ifPresent(text -> line.text("lot", text));
        expires.ifPresent(day -> line.plain("expires", day));
        return line.plain("received", received).toString();
    }
}

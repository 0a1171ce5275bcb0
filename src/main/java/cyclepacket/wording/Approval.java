package cyclepacket.wording;

import java.time.LocalDate;
import java.util.Objects;

/** Who let a language's texts be printed, and from which day on. */
public record Approval(String by, LocalDate on) {
    public Approval {
        Objects.requireNonNull(by, "by");
        Objects.requireNonNull(on, "on");
    }
}

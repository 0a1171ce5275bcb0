package cyclepacket.packet;

import cyclepacket.finding.Finding;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What one run of printing came to.
 *
 * @param preparedOn the day the plan says it was prepared; empty when the plan could not be read
 * @param written where the packet lies; empty when it was refused and nothing was written
 * @param earlier the folder of an earlier run that still lies there after a refusal
 * @param json what {@code packet.json} says, or the findings of a refusal
 */
public record Outcome(
        List<Finding> findings,
        Optional<LocalDate> preparedOn,
        Optional<Written> written,
        Optional<Path> earlier,
        String json) {
    public Outcome {
        findings = List.copyOf(findings);
        Objects.requireNonNull(preparedOn, "preparedOn");
        Objects.requireNonNull(written, "written");
        Objects.requireNonNull(earlier, "earlier");
        Objects.requireNonNull(json, "json");
    }

    /**
     * A packet in its folder.
     *
     * @param isReprint whether exactly this was printed before
     * @param draftReasons why it is a draft, each as the rest of a sentence; empty for a final packet
     */
    public record Written(Path folder, boolean isDraft, boolean isReprint, List<String> draftReasons, String code) {
        public Written {
            Objects.requireNonNull(folder, "folder");
            draftReasons = List.copyOf(draftReasons);
            Objects.requireNonNull(code, "code");
        }
    }
}

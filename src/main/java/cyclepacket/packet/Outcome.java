package cyclepacket.packet;

import cyclepacket.finding.Finding;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What one run of printing came to.
 *
 * @param written where the packet lies; empty when it was refused and nothing was written
 * @param earlier the folder of an earlier run that still lies there after a refusal
 */
public record Outcome(List<Finding> findings, Optional<Written> written, Optional<Path> earlier) {
    public Outcome {
        findings = List.copyOf(findings);
        Objects.requireNonNull(written, "written");
        Objects.requireNonNull(earlier, "earlier");
    }

    /**
     * A packet in its folder.
     *
     * @param json what {@code packet.json} says
     */
    public record Written(Path folder, boolean isDraft, List<String> draftReasons, String code, String json) {
        public Written {
            Objects.requireNonNull(folder, "folder");
            draftReasons = List.copyOf(draftReasons);
            Objects.requireNonNull(code, "code");
            Objects.requireNonNull(json, "json");
        }
    }
}

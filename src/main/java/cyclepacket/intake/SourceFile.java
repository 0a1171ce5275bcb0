package cyclepacket.intake;

import java.util.Objects;

/**
 * One file as it was read.
 *
 * @param shownPath the path as findings show it
 * @param kind plan, clinic, protocol or medicine
 * @param bytes the file, byte for byte
 * @param canonical what it says as compact JSON with sorted keys, a plan without its {@code countersigned} key; empty when
 *     the file is not YAML
 */
public record SourceFile(String shownPath, String kind, byte[] bytes, String canonical) {
    public SourceFile {
        Objects.requireNonNull(shownPath, "shownPath");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(bytes, "bytes");
        Objects.requireNonNull(canonical, "canonical");
    }
}

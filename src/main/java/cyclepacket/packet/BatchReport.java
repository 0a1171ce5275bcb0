package cyclepacket.packet;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/**
 * What a print run came to.
 *
 * @param folder the cover list, separator sheets and packets in the order of printing
 */
public record BatchReport(Path folder, List<BatchLine> lines) {
    public BatchReport {
        Objects.requireNonNull(folder, "folder");
        lines = List.copyOf(lines);
    }

    /** How many plans ended so. */
    public long count(BatchLine.State state) {
        return lines.stream().filter(line -> line.state() == state).count();
    }
}

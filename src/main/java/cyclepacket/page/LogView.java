package cyclepacket.page;

import java.util.List;

/**
 * The patient's own log, which no later issue replaces.
 *
 * @param rows empty rows to fill, numbered from 1
 */
public record LogView(List<String> rows) {
    public LogView {
        rows = List.copyOf(rows);
    }
}

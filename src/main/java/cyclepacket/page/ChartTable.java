package cyclepacket.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One ruled table of the chart copy; the first cell of each row is its heading.
 *
 * @param key names the table for its style sheet
 * @param caption one line above it; may be empty
 */
public record ChartTable(String key, String caption, List<Column> columns, List<Row> rows) {
    public ChartTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        for (Row row : rows) {
            if (row.cells().size() != columns.size()) {
                throw new TemplateFault(
                        "a row of the table " + key + " has " + row.cells().size() + " cells");
            }
        }
    }

    /**
     * One column.
     *
     * @param key names it for the style sheet
     * @param number true when its cells are numbers, set to the right
     */
    public record Column(String key, String head, boolean number) {}

    /**
     * One row.
     *
     * @param marked true when a heavy rule sets it off
     * @param cells one text a column; a line break starts a new line
     */
    public record Row(boolean marked, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** Starts a table whose heads stand in the wording under {@code chart.<key>.<column>}; a leading # means numbers. */
    static Builder of(Wording wording, String key, String... columns) {
        return new Builder(wording, key, columns);
    }

    /** Collects rows. */
    static final class Builder {
        private final String key;
        private final List<Column> columns;
        private final List<Row> rows = new ArrayList<>();
        private String caption = "";

        private Builder(Wording wording, String key, String... columns) {
            this.key = key;
            this.columns = Arrays.stream(columns)
                    .map(column -> column(wording, key, column))
                    .toList();
        }

        private static Column column(Wording wording, String key, String column) {
            String name = column.startsWith("#") ? column.substring(1) : column;
            return new Column(name, wording.text("chart." + key + "." + name), column.startsWith("#"));
        }

        Builder caption(String text) {
            caption = text;
            return this;
        }

        Builder row(String... cells) {
            return row(false, Arrays.asList(cells));
        }

        Builder row(boolean marked, List<String> cells) {
            rows.add(new Row(marked, cells));
            return this;
        }

        ChartTable build() {
            return new ChartTable(key, caption, columns, rows);
        }
    }
}

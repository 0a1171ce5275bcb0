package cyclepacket.page;

import java.util.ArrayList;
import java.util.List;

/** A table in plain text for a screen: columns as wide as their longest cell, two blanks apart. */
final class TextTable {
    private final List<Boolean> isNumber;
    private final List<List<String>> rows = new ArrayList<>();

    /** @param heads the first row; a leading # sets the column to the right */
    TextTable(String... heads) {
        isNumber = List.of(heads).stream().map(head -> head.startsWith("#")).toList();
        rows.add(List.of(heads).stream()
                .map(head -> head.startsWith("#") ? head.substring(1) : head)
                .toList());
    }

    TextTable row(String... cells) {
        rows.add(List.of(cells));
        return this;
    }

    /** Every line indented by two blanks, without blanks at its end. */
    String text() {
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder("  ");
            for (int column = 0; column < row.size(); column++) {
                String gap = " ".repeat(width(column) - row.get(column).length());
                line.append(isNumber.get(column) ? gap + row.get(column) : row.get(column) + gap)
                        .append("  ");
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private int width(int column) {
        return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
    }
}

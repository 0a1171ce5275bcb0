package cyclepacket.finding;

import java.util.Comparator;
import java.util.Objects;

/**
 * Where in the files a finding points.
 *
 * @param file the path to show, as the user gave it or relative to the plan's own folders
 * @param pointer the JSON pointer of the node, for example {@code /doses/fsh-pen/0/amount}; empty for the whole file
 * @param line from 1; 0 when the rule that found it knows only the pointer
 * @param column from 1; 0 when only the pointer is known
 * @param sourceLine the text of that line, empty when not known
 */
public record Place(String file, String pointer, int line, int column, String sourceLine) implements Comparable<Place> {
    private static final Comparator<Place> ORDER =
            Comparator.comparing(Place::file).thenComparingInt(Place::line).thenComparingInt(Place::column);

    public Place {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(pointer, "pointer");
        Objects.requireNonNull(sourceLine, "sourceLine");
    }

    /** A place known by its pointer only; {@link PlaceBook} finds its line and column. */
    public static Place at(String file, String pointer) {
        return new Place(file, pointer, 0, 0, "");
    }

    public boolean isLocated() {
        return line > 0;
    }

    @Override
    public int compareTo(Place other) {
        return ORDER.compare(this, other);
    }
}

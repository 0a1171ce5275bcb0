package cyclepacket.wording;

import cyclepacket.finding.Place;
import java.util.Objects;

/**
 * One text of a wording file.
 *
 * @param line from 1
 * @param source that line of the file as it is written
 */
public record TextEntry(String key, String value, String file, int line, String source) {
    public TextEntry {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(source, "source");
    }

    /** Where the key stands. */
    public Place place() {
        return new Place(file, key, line, 1, source);
    }

    /** Where these words stand in the text, or where it begins when an escape parts them. */
    public Place placeOf(String words) {
        int start = source.indexOf('=') + 1;
        while (start < source.length() && source.charAt(start) == ' ') {
            start++;
        }
        int found = source.indexOf(words, start);
        return new Place(file, key, line, (found < 0 ? start : found) + 1, source);
    }
}

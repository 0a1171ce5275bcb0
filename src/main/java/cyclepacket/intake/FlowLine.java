package cyclepacket.intake;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** One line of a plan in braces, built key by key. */
public final class FlowLine {
    private final Map<String, String> values = new LinkedHashMap<>();

    /** A date, a number or a word of the format, written as it is. */
    public FlowLine plain(String key, Object value) {
        values.put(key, value.toString());
        return this;
    }

    /** Any text; in quotes where YAML could take it for something else. */
    public FlowLine text(String key, String value) {
        values.put(key, text(value));
        return this;
    }

    /** One value as text. */
    public static String text(String value) {
        boolean isSafe = value.matches("[A-Za-z0-9](?:[A-Za-z0-9 ./()+-]*[A-Za-z0-9.)])?")
                && ScalarKind.ofPlain(value) == Tree.Kind.TEXT;
        return isSafe ? value : CanonicalJson.quoted(value);
    }

    @Override
    public String toString() {
        return values.entrySet().stream()
                .map(entry -> entry.getKey() + ": " + entry.getValue())
                .collect(Collectors.joining(", ", "{", "}"));
    }
}

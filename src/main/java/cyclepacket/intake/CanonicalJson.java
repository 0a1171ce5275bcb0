package cyclepacket.intake;

import java.math.BigDecimal;
import java.util.Iterator;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * One spelling for all files that say the same: compact JSON, keys sorted, numbers without trailing zeros or exponent.
 * Comments, quotes and the order of keys leave no trace; the order of lists does.
 */
final class CanonicalJson {
    private final StringBuilder out = new StringBuilder();

    private CanonicalJson() {}

    /** The tree without those of its top-level keys that {@code isLeftOut} picks. */
    static String of(Tree tree, Predicate<String> isLeftOut) {
        CanonicalJson json = new CanonicalJson();
        if (tree instanceof Tree.Mapping mapping) {
            json.mapping(mapping, isLeftOut);
        } else {
            json.value(tree);
        }
        return json.out.toString();
    }

    private void value(Tree tree) {
        if (tree instanceof Tree.Mapping mapping) {
            mapping(mapping, key -> false);
        } else if (tree instanceof Tree.Sequence sequence) {
            sequence(sequence);
        } else {
            scalar((Tree.Scalar) tree);
        }
    }

    private void mapping(Tree.Mapping mapping, Predicate<String> isLeftOut) {
        Map<String, Tree.Entry> sorted = new TreeMap<>(mapping.entries());
        sorted.keySet().removeIf(isLeftOut);
        String separator = "{";
        for (Map.Entry<String, Tree.Entry> entry : sorted.entrySet()) {
            out.append(separator);
            text(entry.getKey());
            out.append(':');
            value(entry.getValue().value());
            separator = ",";
        }
        out.append(sorted.isEmpty() ? "{}" : "}");
    }

    private void sequence(Tree.Sequence sequence) {
        out.append('[');
        Iterator<Tree> items = sequence.items().iterator();
        while (items.hasNext()) {
            value(items.next());
            out.append(items.hasNext() ? "," : "");
        }
        out.append(']');
    }

    private void scalar(Tree.Scalar scalar) {
        switch (scalar.kind()) {
            case TEXT -> text(scalar.written());
            case NUMBER -> out.append(number(scalar.number()));
            case TRUTH -> out.append(scalar.written());
            case NOTHING, REFUSED -> out.append("null");
        }
    }

    private static String number(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private void text(String text) {
        out.append(quoted(text));
    }

    /** A JSON string (RFC 8259 section 7), which is a double-quoted YAML scalar too. */
    static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (char c : text.toCharArray()) {
            if (c == '"' || c == '\\') {
                quoted.append('\\').append(c);
            } else if (c < ' ') {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }
}

package cyclepacket.hostile;

import cyclepacket.hostile.Node.Branch;
import cyclepacket.hostile.Node.Entry;
import cyclepacket.hostile.Node.Leaf;
import cyclepacket.hostile.Node.Row;
import java.util.Locale;
import java.util.regex.Pattern;

/** Writes a bent tree as YAML: keys in block form down to a depth, everything below in braces and brackets. */
final class YamlOut {
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 ().+/-]*[A-Za-z0-9)]|[A-Za-z0-9]");

    /** Short lines, deeper than any key in block form. */
    private static final String BREAK = ",\n          ";

    private static final int MOST = 4 << 20;

    private final int blockDepth;
    private final boolean escapes;
    private final StringBuilder text = new StringBuilder();

    private YamlOut(int blockDepth, boolean escapes) {
        this.blockDepth = blockDepth;
        this.escapes = escapes;
    }

    /**
     * The file's text.
     *
     * @param escapes whether characters that cannot be seen are written as escapes or stand in the file themselves
     */
    static String write(Node root, int blockDepth, boolean escapes) {
        YamlOut out = new YamlOut(blockDepth, escapes);
        out.block(root, 0);
        return out.text.append('\n').toString();
    }

    static boolean isPlain(String text) {
        return PLAIN.matcher(text).matches();
    }

    private void block(Node node, int depth) {
        if (!(node instanceof Branch branch) || branch.entries().isEmpty() || depth >= blockDepth) {
            text.append(depth == 0 ? "" : " ");
            flow(node);
            return;
        }
        for (Entry entry : branch.entries()) {
            text.append(depth == 0 && text.isEmpty() ? "" : "\n").append("  ".repeat(depth));
            leaf(entry.key());
            text.append(':');
            block(entry.value(), depth + 1);
        }
    }

    private void flow(Node node) {
        if (node instanceof Leaf leaf) {
            leaf(leaf);
        } else if (node instanceof Row row) {
            text.append('[');
            for (Node item : row.items()) {
                flow(item);
                text.append(BREAK);
            }
            text.append(']');
        } else if (node instanceof Branch branch) {
            text.append('{');
            for (Entry entry : branch.entries()) {
                leaf(entry.key());
                text.append(": ");
                flow(entry.value());
                text.append(entry.value() instanceof Leaf ? ", " : BREAK);
            }
            text.append('}');
        }
    }

    private void leaf(Leaf leaf) {
        // Four times what is read at all: more would only fill the memory of the test.
        if (text.length() > MOST) {
            return;
        }
        if (leaf.raw()) {
            text.append(leaf.text());
            return;
        }
        text.append('"');
        leaf.text().codePoints().forEach(this::quoted);
        text.append('"');
    }

    private void quoted(int codePoint) {
        if (codePoint == '"' || codePoint == '\\') {
            text.append('\\').appendCodePoint(codePoint);
        } else if (codePoint < ' ' || escapes && codePoint > '~') {
            text.append(String.format(Locale.ROOT, "\\U%08x", codePoint));
        } else {
            text.appendCodePoint(codePoint);
        }
    }
}

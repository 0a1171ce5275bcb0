package cyclepacket.intake;

import cyclepacket.quantity.Refusal;
import java.util.ArrayList;
import java.util.List;

/** Where in a text a value is put, and what stands around it. */
record SpliceText(Source source) {

    /** One stretch of the text, from {@code from} to before {@code to}, and what replaces it. */
    record Splice(String text, int from, int to, String by) {
        String applied() {
            return text.substring(0, from) + by + text.substring(to);
        }
    }

    private String text() {
        return source.text();
    }

    private Splice splice(int from, int to, String by) {
        return new Splice(text(), from, to, by);
    }

    int offset(Spot spot) {
        return text().offsetByCodePoints(source.startOf(spot.line()), spot.column() - 1);
    }

    boolean isFlow(Tree.Sequence list) {
        int at = offset(list.spot());
        return at < text().length() && text().charAt(at) == '[';
    }

    /** Whether a list in brackets is the last thing on its one line, but for a remark. */
    boolean isAlone(Tree.Sequence list) {
        int end = offset(list.end());
        String rest = text().substring(end, lineEnd(end));
        return isFlow(list) && list.spot().line() == list.end().line() && (rest.isBlank() || rest.matches("\\s+#.*"));
    }

    /** Takes the empty brackets away and opens a line below them. */
    Splice firstLine(Tree.Sequence list, Spot key, String item) {
        int end = lineEnd(offset(list.end()));
        String rest = text().substring(offset(list.end()), end);
        int from = offset(list.spot());
        int keep = rest.isBlank() ? endOfWord(from) : from;
        String line = lineBreakAt(end) + indent(key) + "  - " + item;
        return splice(keep, end, (rest.isBlank() ? "" : rest) + line);
    }

    /** Turns a list in brackets into lines. */
    Splice asBlock(Tree.Sequence list, Spot key) {
        int end = lineEnd(offset(list.end()));
        StringBuilder lines = new StringBuilder();
        for (Tree item : list.items()) {
            lines.append(lineBreakAt(end)).append(indent(key)).append("  - ");
            lines.append(text(), offset(item.spot()), offset(item.end()));
        }
        return splice(endOfWord(offset(list.spot())), end, lines.toString());
    }

    private int endOfWord(int before) {
        int at = before;
        while (at > 0 && text().charAt(at - 1) == ' ') {
            at--;
        }
        return at;
    }

    private static String indent(Spot key) {
        return " ".repeat(key.column() - 1);
    }

    Splice afterBracket(Tree.Sequence list, String item) {
        int at = offset(list.spot()) + 1;
        return splice(at, at, item);
    }

    Splice after(Tree item, String inserted) {
        int at = offset(item.end());
        return splice(at, at, inserted);
    }

    /** What stands before the dash of a list's item: its indent. */
    String dashOf(Tree item) {
        int dash = dashAt(item);
        String before = text().substring(startOfLine(dash), dash);
        if (!before.isBlank()) {
            throw new Refusal(
                    "the first line of this list does not start with its dash", "give the dash a line of its own");
        }
        return before;
    }

    private int dashAt(Tree item) {
        int at = offset(item.spot()) - 1;
        while (at >= 0 && Character.isWhitespace(text().charAt(at))) {
            at--;
        }
        if (at < 0 || text().charAt(at) != '-') {
            throw new Refusal("a remark stands between a dash and its line", "move the remark above the dash");
        }
        return at;
    }

    Splice lineBefore(Tree item, String line) {
        int at = startOfLine(dashAt(item));
        return splice(at, at, line + lineBreakAt(lineEnd(at)));
    }

    Splice lineAfter(Tree value, String line) {
        return lineAfter(offset(value.end()), line);
    }

    private Splice lineAfter(int end, String line) {
        if (end > 0 && isBreak(text().charAt(end - 1))) {
            return splice(end, end, line + lineBreakAt(end));
        }
        int at = lineEnd(end);
        int next = afterBreak(at);
        return next == at ? splice(at, at, lineBreakAt(at) + line) : splice(next, next, line + lineBreakAt(at));
    }

    /** The new value over the old one; a value in several lines goes with its key's spacing. */
    Splice over(Tree.Entry old, String key, String value) {
        boolean startsAtKey = old.value().spot().equals(old.key());
        int from = offset(startsAtKey ? old.key() : old.value().spot());
        return splice(from, offset(old.value().end()), startsAtKey ? key + ": " + value : value);
    }

    Splice newKey(Tree.Mapping group, boolean isTop, String after, String line) {
        List<Tree.Entry> entries = new ArrayList<>(group.entries().values());
        Tree.Entry last = group.entries().containsKey(after)
                ? group.entries().get(after)
                : entries.isEmpty() ? null : entries.get(entries.size() - 1);
        if (group.isFlow()) {
            int at = last == null
                    ? offset(group.spot()) + 1
                    : offset(last.value().end());
            return splice(at, at, (last == null ? "" : ", ") + line);
        }
        String indented = indent(entries.get(0).key()) + line;
        if (isTop && !group.entries().containsKey(after)) {
            return atEnd(indented);
        }
        return lineAfter(offset(last.value().end()), indented);
    }

    /** Before a line of three dots, which ends a document, or at the end of the text. */
    private Splice atEnd(String line) {
        int at = text().length();
        for (int n = source.lines().size(); n > 0; n--) {
            if (source.lines().get(n - 1).equals("...")) {
                at = source.startOf(n);
                break;
            }
        }
        boolean startsLine = at == 0 || isBreak(text().charAt(at - 1));
        String lineBreak = text().contains("\r\n") ? "\r\n" : "\n";
        return splice(at, at, (startsLine ? "" : lineBreak) + line + lineBreak);
    }

    Splice without(Tree.Mapping group, String key) {
        Tree.Entry entry = group.entries().get(key);
        int end = offset(entry.value().end());
        if (!group.isFlow()) {
            return splice(startOfLine(offset(entry.key())), afterBreak(lineEnd(end)), "");
        }
        List<String> keys = new ArrayList<>(group.entries().keySet());
        int index = keys.indexOf(key);
        if (index > 0) {
            Tree before = group.entries().get(keys.get(index - 1)).value();
            return splice(offset(before.end()), end, "");
        }
        int to = keys.size() > 1 ? offset(group.entries().get(keys.get(1)).key()) : end;
        return splice(offset(entry.key()), to, "");
    }

    Splice emptied(Tree.Sequence list, Spot key) {
        if (isFlow(list)) {
            return splice(offset(list.spot()), offset(list.end()), "[]");
        }
        int colon = text().indexOf(':', offset(key)) + 1;
        int first = startOfLine(dashAt(list.items().get(0)));
        int after = afterBreak(lineEnd(offset(list.end())));
        return splice(colon, after, " []" + text().substring(colon, first));
    }

    private static boolean isBreak(char c) {
        return c == '\n' || c == '\r';
    }

    private int startOfLine(int at) {
        int start = at;
        while (start > 0 && !isBreak(text().charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private int lineEnd(int at) {
        int end = at;
        while (end < text().length() && !isBreak(text().charAt(end))) {
            end++;
        }
        return end;
    }

    private int afterBreak(int lineEnd) {
        return text().startsWith("\r\n", lineEnd) ? lineEnd + 2 : Math.min(lineEnd + 1, text().length());
    }

    /** The line break that stands here, or at the end of the text the one that the file uses. */
    private String lineBreakAt(int at) {
        if (at < text().length() && isBreak(text().charAt(at))) {
            return text().substring(at, afterBreak(at));
        }
        return text().contains("\r\n") ? "\r\n" : "\n";
    }
}

package cyclepacket.wording;

import java.util.ArrayList;
import java.util.List;

/** Reads a wording file: {@code key = text} a line, {@code #} for a comment, and {@code \}{@code uXXXX} for a character. */
public final class TextFile {
    private TextFile() {}

    /** @throws IllegalArgumentException naming file and line, for a line that is no text */
    public static List<TextEntry> parse(String file, String content) {
        List<TextEntry> entries = new ArrayList<>();
        String[] lines = content.split("\n", -1);
        for (int index = 0; index < lines.length; index++) {
            String line =
                    lines[index].endsWith("\r") ? lines[index].substring(0, lines[index].length() - 1) : lines[index];
            if (line.isBlank() || line.stripLeading().startsWith("#")) {
                continue;
            }
            int sign = line.indexOf('=');
            if (sign <= 0 || line.endsWith("\\")) {
                throw new IllegalArgumentException(
                        file + ":" + (index + 1) + ": a line is: key = text, whole on that line");
            }
            String text = line.substring(sign + 1).stripLeading();
            entries.add(new TextEntry(line.substring(0, sign).strip(), unescaped(text), file, index + 1, line));
        }
        return List.copyOf(entries);
    }

    private static String unescaped(String text) {
        if (text.indexOf('\\') < 0) {
            return text;
        }
        StringBuilder plain = new StringBuilder(text.length());
        for (int at = 0; at < text.length(); at++) {
            char sign = text.charAt(at);
            if (sign != '\\') {
                plain.append(sign);
            } else if (text.startsWith("\\u", at)) {
                plain.append((char) Integer.parseInt(text.substring(at + 2, at + 6), 16));
                at += 5;
            } else {
                plain.append(text.charAt(++at));
            }
        }
        return plain.toString();
    }
}

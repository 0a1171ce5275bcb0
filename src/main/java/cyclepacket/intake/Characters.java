package cyclepacket.intake;

import java.util.Locale;
import java.util.OptionalInt;

/** Which characters a file may hold: none that steers a terminal, turns the reading direction or cannot be seen. */
final class Characters {
    private static final int LONGEST_QUOTE = 40;

    private Characters() {}

    /** Whether a character is refused; line breaks and tabs are judged elsewhere. */
    static boolean isRefused(int codePoint) {
        if (codePoint == '\t' || codePoint == '\n' || codePoint == '\r') {
            return false;
        }
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.UNASSIGNED,
                    Character.PRIVATE_USE -> true;
            default -> turnsDirection(codePoint) || isInvisible(codePoint);
        };
    }

    /** Embeddings, overrides and isolates of the Unicode Bidirectional Algorithm (UAX 9). */
    private static boolean turnsDirection(int codePoint) {
        return (codePoint >= 0x202A && codePoint <= 0x202E) || (codePoint >= 0x2066 && codePoint <= 0x2069);
    }

    private static boolean isInvisible(int codePoint) {
        return codePoint == 0x200B || codePoint == 0x2060 || codePoint == 0xFEFF || codePoint == 0xAD;
    }

    /** The first refused character of a value, line breaks and tabs included. */
    static OptionalInt firstRefusedInValue(String value) {
        return value.codePoints().filter(c -> isRefused(c) || c == '\t').findFirst();
    }

    /** For example {@code U+202E}. */
    static String code(int codePoint) {
        return String.format(Locale.ROOT, "U+%04X", codePoint);
    }

    /** A line that is safe to show: refused characters become a question mark, so that columns stay. */
    static String shown(String line) {
        if (line.codePoints().noneMatch(Characters::isRefused)) {
            return line;
        }
        StringBuilder safe = new StringBuilder();
        line.codePoints().forEach(c -> safe.appendCodePoint(isRefused(c) ? '?' : c));
        return safe.toString();
    }

    /** A value of a file in quotes, safe to show and not longer than a line needs. */
    static String quoted(String value) {
        String safe = shown(value.replace('\n', ' ').replace('\r', ' ').replace('\t', ' '));
        boolean fits = safe.codePointCount(0, safe.length()) <= LONGEST_QUOTE;
        return '"' + (fits ? safe : safe.substring(0, safe.offsetByCodePoints(0, LONGEST_QUOTE)) + "...") + '"';
    }
}

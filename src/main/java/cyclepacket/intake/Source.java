package cyclepacket.intake;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The text of one file and its lines, as an editor counts them. */
final class Source {
    private final String shownPath;
    private final String text;
    private final List<String> lines = new ArrayList<>();
    private final List<Integer> starts = new ArrayList<>();

    private Source(String shownPath, String text) {
        this.shownPath = shownPath;
        this.text = text;
        splitLines();
    }

    /** Bytes as UTF-8 without a byte order mark; a byte that is not UTF-8 becomes the replacement character. */
    static Source of(String shownPath, byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        return new Source(shownPath, text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    static boolean isUtf8(byte[] bytes) {
        try {
            StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes));
            return true;
        } catch (CharacterCodingException notUtf8) {
            return false;
        }
    }

    String shownPath() {
        return shownPath;
    }

    String text() {
        return text;
    }

    List<String> lines() {
        return Collections.unmodifiableList(lines);
    }

    /** Where a line starts in the text; the number is from 1, and one past the last line is the end of the text. */
    int startOf(int line) {
        return line <= starts.size() ? starts.get(line - 1) : text.length();
    }

    Place place(String pointer, Spot spot) {
        String line = spot.line() <= lines.size() ? lines.get(spot.line() - 1) : "";
        return new Place(shownPath, pointer, spot.line(), spot.column(), Characters.shown(line));
    }

    Finding stop(String code, Spot spot, String wrong, String mend) {
        return Finding.stop(code, place("", spot), wrong, mend);
    }

    private void splitLines() {
        int start = 0;
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            if (c == '\n' || c == '\r') {
                addLine(start, at);
                at += c == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n' ? 1 : 0;
                start = at + 1;
            }
        }
        addLine(start, text.length());
    }

    private void addLine(int start, int end) {
        starts.add(start);
        lines.add(text.substring(start, end));
    }
}

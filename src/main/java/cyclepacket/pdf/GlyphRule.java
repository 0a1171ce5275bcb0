package cyclepacket.pdf;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Finds every character that would print as nothing, or as a stand-in, because no shipped font can draw it. */
final class GlyphRule {
    /** Spaces, breaks and joiners that leave no mark and need none. */
    private static final Set<Integer> MARKLESS =
            Set.of(0x09, 0x0A, 0x0D, 0x20, 0xAD, 0x200B, 0x200C, 0x200D, 0x2060, 0xFEFF);

    private final FontShelf fonts;
    private final Place place;

    GlyphRule(FontShelf fonts, Place place) {
        this.fonts = fonts;
        this.place = place;
    }

    /** One finding for each character of the text that cannot be printed, in the order of their numbers. */
    List<Finding> check(String text) {
        return written(text).stream()
                .filter(this::isMissing)
                .mapToObj(this::finding)
                .toList();
    }

    /** Each character once: a packet writes forty thousand, and not a hundred different ones. */
    private static BitSet written(String text) {
        BitSet written = new BitSet();
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            written.set(text.codePointAt(at));
        }
        return written;
    }

    private boolean isMissing(int codePoint) {
        if (MARKLESS.contains(codePoint)) {
            return false;
        }
        return turnsText(codePoint) || codePoint == 0xFFFC || !fonts.canDraw(codePoint);
    }

    /** Controls that can show digits in another order than they are stored; no packet needs them. */
    private static boolean turnsText(int codePoint) {
        return codePoint >= 0x202A && codePoint <= 0x202E || codePoint >= 0x2066 && codePoint <= 0x2069;
    }

    private Finding finding(int codePoint) {
        String name = Optional.ofNullable(Character.getName(codePoint)).orElse("without a name");
        return Finding.stop(
                "GLYPH-MISSING",
                place,
                String.format(Locale.ROOT, "no shipped font can print U+%04X %s", codePoint, name),
                "write it in letters that the packet's fonts have, or as a word");
    }
}

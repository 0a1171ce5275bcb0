package cyclepacket.pdf;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * How well one colour stands out from another.
 *
 * <p>Source: W3C, Web Content Accessibility Guidelines 2.1, definitions "relative luminance" and "contrast ratio".
 */
public final class Contrast {
    /** Text of ordinary size, success criterion 1.4.3. */
    public static final double TEXT = 4.5;

    /** Text from 18 pt, or bold from 14 pt, criterion 1.4.3; lines and shapes, criterion 1.4.11. */
    public static final double LARGE_TEXT_AND_SHAPES = 3;

    private static final Pattern HEX = Pattern.compile("#([0-9A-Fa-f]{6}|[0-9A-Fa-f]{3})\\b");

    private Contrast() {}

    /** From 1, the same, to 21, black on white; colours are written {@code #rrggbb} or {@code #rgb}. */
    public static double ratio(String one, String other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    /** The same after a copier took the colours away: each colour becomes the grey of its own luma. */
    public static double ratioInGrey(String one, String other) {
        return ratio(grey(one), grey(other));
    }

    /** Every colour that a style sheet names in hexadecimal, as {@code #rrggbb}, in the order of the text. */
    public static List<String> coloursIn(String css) {
        Set<String> found = new LinkedHashSet<>();
        HEX.matcher(css).results().forEach(match -> found.add(hex(channels(match.group()))));
        return new ArrayList<>(found);
    }

    private static double luminance(String colour) {
        int[] channels = channels(colour);
        return 0.2126 * linear(channels[0]) + 0.7152 * linear(channels[1]) + 0.0722 * linear(channels[2]);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /** Rec. 601 luma, which copiers and grey conversions use: common practice, no published source for copiers. */
    private static String grey(String colour) {
        int[] channels = channels(colour);
        int luma = (int) Math.round(0.299 * channels[0] + 0.587 * channels[1] + 0.114 * channels[2]);
        return hex(new int[] {luma, luma, luma});
    }

    private static int[] channels(String colour) {
        if (!HEX.matcher(colour).matches()) {
            throw new IllegalArgumentException("not a colour: " + colour);
        }
        String digits = colour.length() == 4 ? colour.replaceAll("([0-9A-Fa-f])", "$1$1") : colour;
        int value = Integer.parseInt(digits.substring(1), 16);
        return new int[] {value >> 16, value >> 8 & 0xFF, value & 0xFF};
    }

    private static String hex(int[] channels) {
        return String.format(java.util.Locale.ROOT, "#%02x%02x%02x", channels[0], channels[1], channels[2]);
    }
}

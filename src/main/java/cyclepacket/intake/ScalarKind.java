package cyclepacket.intake;

import java.math.BigDecimal;
import java.util.Set;

/**
 * Decides what an unquoted value is: a number only by the grammar of JSON (RFC 8259 section 6), true and false only in
 * small letters, everything else text as written.
 */
final class ScalarKind {
    private static final Set<String> NOTHING = Set.of("", "~", "null", "Null", "NULL");
    private static final int LONGEST_NUMBER = 40;
    private static final int WIDEST_SCALE = 30;

    private ScalarKind() {}

    static Tree.Kind ofPlain(String written) {
        if (NOTHING.contains(written)) {
            return Tree.Kind.NOTHING;
        }
        if (written.equals("true") || written.equals("false")) {
            return Tree.Kind.TRUTH;
        }
        return isNumber(written) ? Tree.Kind.NUMBER : Tree.Kind.TEXT;
    }

    /** JSON's grammar; an exponent so large that its digits would fill the memory stays text. */
    static boolean isNumber(String written) {
        if (written.length() > LONGEST_NUMBER || !followsGrammar(written)) {
            return false;
        }
        try {
            return Math.abs(new BigDecimal(written).scale()) <= WIDEST_SCALE;
        } catch (NumberFormatException exponentOutOfRange) {
            return false;
        }
    }

    private static boolean followsGrammar(String text) {
        int at = text.startsWith("-") ? 1 : 0;
        int whole = skipDigits(text, at);
        if (whole == at || (text.charAt(at) == '0' && whole > at + 1)) {
            return false;
        }
        at = whole;
        if (at < text.length() && text.charAt(at) == '.') {
            int fraction = skipDigits(text, at + 1);
            if (fraction == at + 1) {
                return false;
            }
            at = fraction;
        }
        return at == text.length() || isExponent(text, at);
    }

    private static boolean isExponent(String text, int start) {
        if (text.charAt(start) != 'e' && text.charAt(start) != 'E') {
            return false;
        }
        int at = start + 1;
        if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
            at++;
        }
        return at < text.length() && skipDigits(text, at) == text.length();
    }

    private static int skipDigits(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at;
    }
}

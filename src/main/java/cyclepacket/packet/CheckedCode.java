package cyclepacket.packet;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Locale;

/**
 * A short code over bytes: ten symbols of Crockford's base 32 and his check symbol (modulo 37), for example
 * {@code 7K3M-Q9X2-TR5}. Fifty bits of SHA-256 tell any two issues apart; the check symbol finds a slip in reading aloud.
 */
final class CheckedCode {
    private static final String SYMBOLS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int DATA_SYMBOLS = 10;
    private static final int BITS_A_SYMBOL = 5;
    private static final BigInteger CHECK_MODULUS = BigInteger.valueOf(37);

    private CheckedCode() {}

    /** The code over all parts; each part's length counts too, so that moving bytes between parts changes it. */
    static String over(List<byte[]> parts) {
        MessageDigest digest = sha256();
        for (byte[] part : parts) {
            digest.update((part.length + ":").getBytes(StandardCharsets.US_ASCII));
            digest.update(part);
        }
        byte[] hash = digest.digest();
        while (true) {
            String data = data(hash);
            BigInteger check = value(data).mod(CHECK_MODULUS);
            // The last five check symbols are punctuation that nobody can read aloud; hashing once more avoids them.
            if (check.intValueExact() < SYMBOLS.length()) {
                return grouped(data + SYMBOLS.charAt(check.intValueExact()));
            }
            hash = sha256().digest(hash);
        }
    }

    /**
     * A code as it was typed or read aloud, without hyphens and spaces: I and L count as 1, O as 0 (Crockford's base 32
     * reads them so; from memory).
     */
    static String plain(String typed) {
        return typed.replaceAll("[-\\s\u00a0]", "")
                .toUpperCase(Locale.ROOT)
                .replace('I', '1')
                .replace('L', '1')
                .replace('O', '0');
    }

    /** Whether {@code code} ends with the check symbol of its first ten; hyphens and case do not count. */
    static boolean hasRightCheck(String code) {
        String plain = plain(code);
        if (plain.length() != DATA_SYMBOLS + 1 || !plain.chars().allMatch(each -> SYMBOLS.indexOf(each) >= 0)) {
            return false;
        }
        int check = value(plain.substring(0, DATA_SYMBOLS)).mod(CHECK_MODULUS).intValueExact();
        return SYMBOLS.indexOf(plain.charAt(DATA_SYMBOLS)) == check;
    }

    private static String data(byte[] hash) {
        BigInteger bits = new BigInteger(1, hash).shiftRight(hash.length * 8 - DATA_SYMBOLS * BITS_A_SYMBOL);
        StringBuilder data = new StringBuilder();
        for (int symbol = DATA_SYMBOLS - 1; symbol >= 0; symbol--) {
            int at = bits.shiftRight(symbol * BITS_A_SYMBOL).intValue() & (SYMBOLS.length() - 1);
            data.append(SYMBOLS.charAt(at));
        }
        return data.toString();
    }

    private static BigInteger value(String data) {
        BigInteger value = BigInteger.ZERO;
        for (char symbol : data.toCharArray()) {
            value = value.shiftLeft(BITS_A_SYMBOL).add(BigInteger.valueOf(SYMBOLS.indexOf(symbol)));
        }
        return value;
    }

    static String grouped(String symbols) {
        return symbols.substring(0, 4) + "-" + symbols.substring(4, 8) + "-" + symbols.substring(8);
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyRuntimeHasIt) {
            throw new IllegalStateException(everyRuntimeHasIt);
        }
    }
}

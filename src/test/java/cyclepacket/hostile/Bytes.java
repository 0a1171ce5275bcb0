package cyclepacket.hostile;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Damage below the letters: halves of characters, other encodings, cuts and stray bytes. */
final class Bytes {
    private Bytes() {}

    static byte[] damaged(String text, Chance chance) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return switch (chance.below(9)) {
            case 0 -> Arrays.copyOf(bytes, chance.below(bytes.length + 1));
            case 1 -> flipped(bytes, chance);
            case 2 -> with(bytes, chance.below(bytes.length + 1), new byte[] {(byte) 0xC3});
            case 3 -> with(bytes, chance.below(bytes.length + 1), new byte[] {(byte) chance.below(256)});
            case 4 -> with(bytes, 0, new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF});
            case 5 -> text.getBytes(StandardCharsets.UTF_16);
            case 6 -> text.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8);
            case 7 -> with(bytes, chance.below(bytes.length + 1), "\n---\n".getBytes(StandardCharsets.UTF_8));
            default ->
                with(
                        bytes,
                        bytes.length,
                        ("#".repeat(1_000) + "\n").repeat(1_100).getBytes(StandardCharsets.UTF_8));
        };
    }

    private static byte[] flipped(byte[] bytes, Chance chance) {
        byte[] other = bytes.clone();
        other[chance.below(other.length)] ^= (byte) (1 << chance.below(8));
        return other;
    }

    private static byte[] with(byte[] bytes, int at, byte[] scrap) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length + scrap.length);
        out.write(bytes, 0, at);
        out.writeBytes(scrap);
        out.write(bytes, at, bytes.length - at);
        return out.toByteArray();
    }
}

package cyclepacket.packet;

import cyclepacket.intake.SourceFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The two codes of a plan: what a second person compared, and what exactly was printed. */
final class Codes {
    private Codes() {}

    /**
     * Over what the files say, the plan without its {@code countersigned} key: comments and spacing do not count, any
     * value does.
     */
    static String countersign(List<SourceFile> sources) {
        List<byte[]> parts = new ArrayList<>();
        for (SourceFile source : sources) {
            parts.add(utf8(source.kind()));
            parts.add(utf8(source.canonical()));
        }
        return CheckedCode.over(parts);
    }

    /** Over every byte of the inputs, the program's version, and what {@link #templates} says of the templates. */
    static String issue(List<SourceFile> sources, byte[] templates, String version) {
        List<byte[]> parts = new ArrayList<>();
        parts.add(utf8(version));
        for (SourceFile source : sources) {
            parts.add(utf8(source.kind()));
            parts.add(source.bytes());
        }
        parts.add(templates);
        return CheckedCode.over(parts);
    }

    /** A digest over the name and every byte of every file of a folder. */
    static byte[] templates(Path folder) throws IOException {
        MessageDigest digest = CheckedCode.sha256();
        for (Path file : filesBelow(folder)) {
            byte[] name = utf8(folder.relativize(file).toString().replace('\\', '/'));
            byte[] bytes = Files.readAllBytes(file);
            digest.update(utf8(name.length + ":" + bytes.length + ":"));
            digest.update(name);
            digest.update(bytes);
        }
        return digest.digest();
    }

    private static List<Path> filesBelow(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .sorted((left, right) -> left.toString().compareTo(right.toString()))
                    .toList();
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}

package cyclepacket.packet;

import cyclepacket.intake.SourceFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;

/** The two codes of a plan: what a second person compared, and what exactly was printed. */
final class Codes {
    /** No template, style sheet, wording or font ends so; whatever may be read counts. */
    private static final List<String> LEFT_BEHIND =
            List.of("~", "#", ".bak", ".orig", ".rej", ".swp", ".swo", ".tmp", ".DS_Store", "Thumbs.db", "desktop.ini");

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

    /** Over every byte of the inputs and of the templates, the issue it replaces, and the program's version. */
    static String issue(List<SourceFile> sources, List<SourceFile> replaced, List<byte[]> templates, String version) {
        List<byte[]> parts = new ArrayList<>();
        parts.add(utf8(version));
        addAll(parts, sources);
        parts.add(utf8("replaces " + replaced.size()));
        addAll(parts, replaced);
        parts.addAll(templates);
        return CheckedCode.over(parts);
    }

    /** Over every byte of the inputs alone: the same whatever templates or program print them. */
    static String inputs(List<SourceFile> sources) {
        List<byte[]> parts = new ArrayList<>();
        addAll(parts, sources);
        return CheckedCode.over(parts);
    }

    private static void addAll(List<byte[]> parts, List<SourceFile> sources) {
        for (SourceFile source : sources) {
            parts.add(utf8(source.kind()));
            parts.add(source.bytes());
        }
    }

    /** What an editor or a file manager leaves beside the files it opens is no template and prints nothing. */
    private static boolean isLeftBehind(Path file) {
        return LEFT_BEHIND.stream().anyMatch(file.getFileName().toString()::endsWith);
    }

    /** The name of every template file and a digest of what it holds, read once for many issues. */
    static List<byte[]> templates(Path templates) throws IOException {
        List<byte[]> parts = new ArrayList<>();
        for (Path file : filesBelow(templates)) {
            parts.add(utf8(templates.relativize(file).toString().replace('\\', '/')));
            byte[] content = Files.readAllBytes(file);
            parts.add(
                    file.toString().endsWith(".ttf")
                            ? sum(content)
                            : CheckedCode.sha256().digest(content));
        }
        return List.copyOf(parts);
    }

    /**
     * Two checksums and the length, longer together than the code made of them. A digest of the fonts took a
     * twentieth of a short run, and nobody forges a font to keep a code.
     */
    private static byte[] sum(byte[] font) {
        CRC32 one = new CRC32();
        CRC32C other = new CRC32C();
        one.update(font);
        other.update(font);
        return utf8(font.length + " " + one.getValue() + " " + other.getValue());
    }

    private static List<Path> filesBelow(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !isLeftBehind(file))
                    .sorted((left, right) -> left.toString().compareTo(right.toString()))
                    .toList();
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}

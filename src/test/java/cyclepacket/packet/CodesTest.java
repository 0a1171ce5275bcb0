package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is read for a page counts in its code, and nothing else does. */
class CodesTest {
    @TempDir
    Path templates;

    private String code() throws IOException {
        return Codes.issue(List.of(), List.of(), Codes.templates(templates), "1");
    }

    private void write(String name) throws IOException {
        Path file = templates.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, "text of " + name);
    }

    @Test
    void doesNotCountWhatEditorsAndFileManagersLeave() throws IOException {
        write("parts/door.ftlh");
        String before = code();
        for (String left : List.of(
                "parts/door.ftlh~",
                "parts/door.ftlh.bak",
                "parts/.door.ftlh.swp",
                "parts/#door.ftlh#",
                ".DS_Store",
                "parts/Thumbs.db")) {
            write(left);
            assertEquals(before, code(), left);
        }
    }

    /** Every file of the real folder, with one byte of it changed. */
    @Test
    void seesOneChangedByteInAnyTemplate() throws IOException {
        Path real = Path.of("templates");
        List<byte[]> parts = Codes.templates(real);
        String before = Codes.issue(List.of(), List.of(), parts, "1");
        List<Path> files;
        try (Stream<Path> all = Files.walk(real)) {
            files = all.filter(Files::isRegularFile).toList();
        }
        assertTrue(files.size() > 50, "the real folder");
        for (Path file : files) {
            Path copy = templates.resolve(real.relativize(file).toString());
            Files.createDirectories(copy.getParent());
            byte[] bytes = Files.readAllBytes(file);
            bytes[bytes.length / 2] ^= 1;
            Files.write(copy, bytes);
            List<byte[]> changed = new ArrayList<>(parts);
            List<byte[]> own = Codes.templates(templates);
            int at = indexOf(parts, own.get(0));
            changed.set(at + 1, own.get(1));
            assertNotEquals(before, Codes.issue(List.of(), List.of(), changed, "1"), file.toString());
            Files.delete(copy);
        }
    }

    private static int indexOf(List<byte[]> parts, byte[] name) {
        for (int at = 0; at < parts.size(); at += 2) {
            if (Arrays.equals(parts.get(at), name)) {
                return at;
            }
        }
        throw new AssertionError(new String(name, java.nio.charset.StandardCharsets.UTF_8));
    }

    /** A hidden file of wording is read as well, so that it counts. */
    @Test
    void countsEveryFileThatCanBeRead() throws IOException {
        write("parts/door.ftlh");
        String before = code();
        for (String own : List.of("style/new.css", "wording/en/.more.properties", "fonts/New.ttf", "parts/card.ftlh")) {
            write(own);
            String now = code();
            assertNotEquals(before, now, own);
            before = now;
        }
        Files.writeString(templates.resolve("parts/door.ftlh"), "another text");
        assertNotEquals(before, code());
    }
}

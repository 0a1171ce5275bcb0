package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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

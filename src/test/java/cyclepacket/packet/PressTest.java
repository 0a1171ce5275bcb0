package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.pdf.Conformity;
import cyclepacket.pdf.Typesetter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo's packets from the plan file to the finished PDF. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PressTest {
    private static final Path HOME = Path.of("").toAbsolutePath();
    private static final Path PLANS = Path.of("plans/patients");

    @TempDir
    static Path out;

    private Press press;

    @BeforeAll
    void printsTheDemo() throws IOException {
        press = new Press(HOME);
        for (Path plan : press.examplePlans()) {
            assertTrue(press.print(plan, out, false, Instant.EPOCH).written().isPresent(), plan.toString());
        }
    }

    @AfterAll
    void closes() {
        press.close();
    }

    private byte[] read(int issue, String file) throws IOException {
        return Files.readAllBytes(out.resolve("SM-04417/issue-" + issue).resolve(file));
    }

    /** The words of each page, with plain spaces. */
    private List<String> pages(int issue, String file) throws IOException {
        return Typesetter.pageTexts(read(issue, file)).stream()
                .map(page -> page.replace('\u00a0', ' '))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void keepsTheAccessibilityAndArchivingStandards(int issue) throws IOException {
        Conformity.assertConforms(read(issue, "packet.pdf"));
        Conformity.assertConforms(read(issue, "chart.pdf"));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void putsTwoIdentifiersOnEveryPageButTheDoor(int issue) throws IOException {
        List<String> pages = pages(issue, "packet.pdf");
        List<String> anonymous =
                pages.stream().filter(page -> !page.contains("SM-04417")).toList();
        assertEquals(1, anonymous.size(), "the door page alone");
        assertTrue(anonymous.get(0).contains("WH, issue " + issue), anonymous.get(0));
        assertFalse(anonymous.get(0).contains("Wren Hollis"), anonymous.get(0));
        for (String page : pages) {
            boolean isDoor = page.equals(anonymous.get(0));
            assertEquals(!isDoor, page.contains("Wren Hollis") && page.contains("17 April 1990"), page);
        }
        for (String page : pages(issue, "chart.pdf")) {
            assertTrue(page.contains("Wren Hollis") && page.contains("7730418"), page);
        }
    }

    @Test
    void marksADraftOnEveryPageAndAFinalPacketOnNone() throws IOException {
        for (String page : pages(1, "packet.pdf")) {
            assertTrue(page.contains("DRAFT"), page);
        }
        for (String page : pages(3, "packet.pdf")) {
            assertFalse(page.contains("DRAFT"), page);
        }
    }

    @Test
    void namesTheIssueItReplacesAndItsDay() throws IOException {
        String second = pages(2, "packet.pdf").get(0);
        assertTrue(second.contains("REPLACES issue 1 of 3 March"), second);
    }

    @Test
    void printsTheSameBytesInAnyZoneAndLocale() throws IOException {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        Path elsewhere = out.resolve("elsewhere");
        try (Press other = new Press(HOME)) {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            other.print(PLANS.resolve("SM-04417-issue-3.yaml"), elsewhere, false, Instant.EPOCH);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
        for (String file : List.of("packet.pdf", "chart.pdf", "packet.json")) {
            assertArrayEquals(
                    read(3, file),
                    Files.readAllBytes(elsewhere.resolve("SM-04417/issue-3").resolve(file)),
                    file);
        }
    }

    @Test
    void showsEverythingToItsOwnerAlone() throws IOException {
        Path folder = out.resolve("SM-04417/issue-1");
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)));
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
            }
        }
    }

    @Test
    void leavesNothingBehindWhenItCannotWrite() throws IOException {
        Path blocked = out.resolve("blocked");
        Files.createDirectories(blocked);
        Files.writeString(blocked.resolve("SM-04417"), "a file where the folder should be");
        Path plan = PLANS.resolve("SM-04417.yaml");
        assertThrows(IOException.class, () -> press.print(plan, blocked, false, Instant.EPOCH));
        try (Stream<Path> files = Files.walk(blocked)) {
            assertEquals(2, files.count());
        }
    }

    @Test
    void replacesAnEarlierRunWhole() throws IOException {
        Path again = out.resolve("again");
        Path plan = PLANS.resolve("SM-04417.yaml");
        press.print(plan, again, true, Instant.EPOCH);
        press.print(plan, again, false, Instant.EPOCH);
        try (Stream<Path> files = Files.walk(again.resolve("SM-04417/issue-1"))) {
            assertEquals(
                    List.of("chart.pdf", "packet.json", "packet.pdf"),
                    files.filter(Files::isRegularFile)
                            .map(file -> file.getFileName().toString())
                            .sorted()
                            .toList());
        }
    }

    @Test
    void keepsAPageThatABrowserShowsAlone() throws IOException {
        Path kept = out.resolve("kept");
        press.print(PLANS.resolve("SM-04417.yaml"), kept, true, Instant.EPOCH);
        String page = Files.readString(kept.resolve("SM-04417/issue-1/packet.xhtml"), StandardCharsets.UTF_8);
        assertTrue(page.contains("@font-face"));
        String[] parts = page.split("<div class=\"part ");
        assertTrue(parts.length > 8, "every part of the packet");
        for (int part = 1; part < parts.length; part++) {
            assertTrue(parts[part].contains("DRAFT"), "a draft is one on every part");
            assertEquals(!parts[part].startsWith("door"), parts[part].contains("Wren Hollis"), parts[part]);
        }
        assertFalse(page.contains("<link"), "no style sheet of its own file");
        assertFalse(page.contains("http:") && page.contains("src=\"http"), "nothing from a network");
    }
}

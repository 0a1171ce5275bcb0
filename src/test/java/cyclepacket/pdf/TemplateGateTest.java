package cyclepacket.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Checked;
import cyclepacket.finding.Finding;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every way that a page could ask for a file or a network address; the door must hear nothing. */
class TemplateGateTest {
    private static final Path FOLDER = Path.of("target", "gate-test");
    private static final String SECRET = "SECRET WORDS";
    private static Typesetter typesetter;

    @BeforeAll
    static void open() throws IOException {
        Path templates = Files.createDirectories(FOLDER.resolve("templates"));
        for (String part : List.of("fonts", "colour")) {
            Files.createDirectories(templates.resolve(part));
            try (var files = Files.list(Samples.TEMPLATES.resolve(part))) {
                for (Path file : files.toList()) {
                    Files.write(templates.resolve(part).resolve(file.getFileName()), Files.readAllBytes(file));
                }
            }
        }
        Files.writeString(templates.resolve("page.css"), "p:before { content: 'From the sheet. ' }");
        Files.writeString(templates.resolve("far.css"), "@import url('../outside.css');");
        Files.writeString(FOLDER.resolve("outside.css"), "p:before { content: '" + SECRET + "' }");
        Files.deleteIfExists(templates.resolve("link.css"));
        Files.createSymbolicLink(templates.resolve("link.css"), Path.of("..", "outside.css"));
        typesetter = Typesetter.open(templates);
    }

    @Test
    void servesStyleSheetFromTemplates() {
        Checked<byte[]> made = typesetter.typeset(linking("page.css"));
        assertTrue(Typesetter.textOf(made.value().orElseThrow()).contains("From the sheet. Stop."));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../outside.css",
                "a/../../outside.css",
                "%2e%2e/outside.css",
                "/../outside.css",
                "link.css",
                "far.css",
                "jar:file:/x.jar!/y.css",
                "classpath:/x.css",
                "data:text/css,p%7B%7D",
                "ftp://127.0.0.1/x.css",
                "//127.0.0.1/x.css",
                "template://host/page.css",
                "file:/etc/hostname",
                "a\u0000.css"
            })
    void refusesStyleSheetFromElsewhere(String address) {
        assertRefused(typesetter.typeset(linking(address.replace("\u0000", "%00"))));
    }

    @Test
    void refusesAbsoluteFileEvenOneInTheTemplates() {
        assertRefused(typesetter.typeset(
                linking(FOLDER.resolve("templates/page.css").toUri().toString())));
    }

    @Test
    void reportsMissingFile() {
        Checked<byte[]> made = typesetter.typeset(linking("nowhere.css"));
        assertEquals(
                List.of("RESOURCE-MISSING"),
                made.findings().stream().map(Finding::code).toList());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<img src='URL/a.png' alt='a'/>",
                "<p style='background-image: url(URL/a.png)'>a</p>",
                "<style>@import 'URL/a.css';</style>",
                "<style>@font-face { font-family: A; src: url(URL/a.ttf) } p { font-family: A }</style>",
                "<iframe src='URL/a'></iframe>",
                "<object data='URL/a'></object>",
                "<script src='URL/a.js'></script>",
                "<svg xmlns='http://www.w3.org/2000/svg' alt='a'><image width='9' height='9' href='URL/a.png'/></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' alt='a'>"
                        + "<use xlink:href='URL/a.svg#b'/></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg' alt='a'><rect width='9' height='9' fill='url(URL/a.svg#b)'/></svg>",
                "<svg xmlns='http://www.w3.org/2000/svg' alt='a'><style>@import url(URL/a.css);</style></svg>"
            })
    void callsNobody(String body) throws IOException {
        try (ServerSocket door = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String url = "http://127.0.0.1:" + door.getLocalPort();
            boolean isHead = body.startsWith("<style>");
            String filled = body.replace("URL", url);
            assertRefused(typesetter.typeset(page(isHead ? filled : "", isHead ? "<p>Stop.</p>" : filled)));
            assertNobodyAt(door);
        }
    }

    @Test
    void readsNoEntityAndNoForeignDocumentType() throws IOException {
        try (ServerSocket door = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String url = "http://127.0.0.1:" + door.getLocalPort();
            for (String type : List.of(
                    "<!DOCTYPE html SYSTEM '" + url + "/a.dtd'>",
                    "<!DOCTYPE html [<!ENTITY a SYSTEM '" + url + "/a'>]>",
                    "<!DOCTYPE html [<!ENTITY % a SYSTEM '" + url + "/a'> %a;]>",
                    "<!DOCTYPE html [<!ENTITY a 'aaaa'><!ENTITY b '&a;&a;&a;'>]>")) {
                String page = type + "<html xmlns='http://www.w3.org/1999/xhtml'><body><p>&a;</p></body></html>";
                Checked<byte[]> made = typesetter.typeset(Samples.sheet(page));
                assertEquals("XHTML-BROKEN", made.findings().get(0).code());
                assertTrue(made.value().isEmpty());
            }
            assertNobodyAt(door);
        }
    }

    @Test
    void heardKnockWhenThereIsOne() throws IOException {
        try (ServerSocket door = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
                Socket knock = new Socket(door.getInetAddress(), door.getLocalPort())) {
            assertTrue(knock.isConnected());
            door.setSoTimeout(2_000);
            door.accept().close();
        }
    }

    private static void assertNobodyAt(ServerSocket door) throws IOException {
        door.setSoTimeout(60);
        try (Socket caller = door.accept()) {
            throw new AssertionError("a call came from " + caller.getRemoteSocketAddress());
        } catch (SocketTimeoutException quiet) {
            assertFalse(door.isClosed());
        }
    }

    private static void assertRefused(Checked<byte[]> made) {
        assertTrue(made.value().isEmpty());
        assertTrue(
                made.findings().stream().anyMatch(finding -> finding.code().equals("RESOURCE-REFUSED")),
                made.findings().toString());
    }

    private static Sheet linking(String address) {
        return page("<link rel=\"stylesheet\" type=\"text/css\" href=\"" + address + "\"/>", "<p>Stop.</p>");
    }

    private static Sheet page(String head, String body) {
        return Samples.sheet("<html xmlns=\"http://www.w3.org/1999/xhtml\"><head>" + head + "</head><body>" + body
                + "</body></html>");
    }
}

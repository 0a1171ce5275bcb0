package cyclepacket.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IdentifyCommandTest {
    @TempDir
    static Path folder;

    private static String out;
    private static List<String> codes;

    @BeforeAll
    static void printsTheDemo() throws IOException {
        out = folder.resolve("out").toString();
        TypedRun.of("demo", "--out", out);
        Matcher each = Pattern.compile("\"code\":\"([^\"]+)\"")
                .matcher(Files.readString(Path.of(out, "SM-04417/register.json")));
        codes = each.results().map(found -> found.group(1)).toList();
        assertEquals(3, codes.size());
    }

    private static TypedRun identify(String what) {
        return TypedRun.of("identify", what, "--out", out);
    }

    @Test
    void namesTheIssueInForceAndTheRetiredOnes() {
        TypedRun third = identify(codes.get(2));
        assertEquals(0, third.exit(), third.out());
        assertTrue(third.out().contains("Plan SM-04417, issue 3, final"), third.out());
        assertTrue(third.out().contains("This is the issue in force."), third.out());
        TypedRun first = identify(codes.get(0));
        assertEquals(1, first.exit());
        assertTrue(first.out().contains("SUPERSEDED by issue 3, code " + codes.get(2)), first.out());
    }

    @Test
    void takesACodeAsItIsReadAloud() {
        String heard = codes.get(2).toLowerCase(Locale.ROOT).replace("-", " ").replace('0', 'o');
        assertEquals(0, identify(heard).exit(), heard);
    }

    @Test
    void findsASlipByTheCheckSymbol() {
        String code = codes.get(2);
        char last = code.charAt(code.length() - 1);
        TypedRun slip = identify(code.substring(0, code.length() - 1) + (last == '7' ? '8' : '7'));
        assertEquals(2, slip.exit());
        assertTrue(slip.err().contains("its check symbol does not fit"), slip.err());
    }

    @Test
    void readsTheCodeOffAPdf() throws IOException {
        TypedRun packet = identify(out + "/SM-04417/issue-3/packet.pdf");
        assertEquals(0, packet.exit(), packet.err());
        assertTrue(packet.out().contains("Byte for byte the file"), packet.out());
        Path copy = folder.resolve("changed.pdf");
        byte[] bytes = Files.readAllBytes(Path.of(out, "SM-04417/issue-2/packet.pdf"));
        Files.write(copy, Arrays.copyOf(bytes, bytes.length + 1));
        TypedRun changed = identify(copy.toString());
        assertEquals(1, changed.exit());
        assertTrue(changed.out().contains("Not the same bytes as any stored file"), changed.out());
    }

    @Test
    void comparesIssuesPdfsPlansAndCodes() {
        TypedRun run = TypedRun.of(
                "compare", out + "/SM-04417/issue-2/packet.pdf", "plans/patients/SM-04417-issue-3.yaml", "--out", out);
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("before choriogonadotropin alfa: nothing"), run.out());
        assertTrue(run.out().contains("250 micrograms at exactly 7:30 p.m. (19:30)."), run.out());
        TypedRun same = TypedRun.of("compare", codes.get(2), out + "/SM-04417/issue-3", "--out", out);
        assertTrue(same.out().contains("No day differs."), same.out());
        assertEquals(
                2, TypedRun.of("compare", "nothing", out + "/SM-04417/issue-3").exit());
    }
}

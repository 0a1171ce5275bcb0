package cyclepacket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No number without its ground: a published source with its year or its number, "no published source", "from memory",
 * "invented", "by definition" or "technical limit". DEVELOPERS.md says what this walk covers.
 */
class SourcesTest {
    private static final Path MAIN = Path.of("src/main/java/cyclepacket");
    private static final Path TESTS = Path.of("src/test/java/cyclepacket");

    private static final Pattern GROUND =
            Pattern.compile("(?is)no\\s+published\\s+source|from\\s+memory|invented|by\\s+definition|"
                    + "technical\\s+limit|worked\\s+(?:out\\s+)?(?:by\\s+hand|from)|by\\s+hand|\\b(?:19|20)\\d\\d\\b|"
                    + "\\b(?:RFC|ISO|USP|WCAG|PEMAT|PMC|DO[I]|IM\\.)[ -]?\\d+");

    private static final Pattern CONSTANT = Pattern.compile(
            "static final "
                    + "(?:int|long|double|float|BigDecimal|BigInteger|Duration|Period|LocalTime|Dose|Volume|Money|Length|Ratio) (\\w+) =[^;]*\\d");

    /** A number in code that is more than an end, a neighbour or a half. */
    private static final Pattern LITERAL =
            Pattern.compile("(?<![\\w.\"])(?:[3-9]|[1-9][\\d_]+|\\d+\\.\\d+)L?(?![\\w.\"])");

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
        }
    }

    /** Constants whose own comment, and whose class's comment, give no ground. */
    static List<String> bareConstants(String code) {
        List<String> bare = new ArrayList<>();
        String[] lines = code.split("\n");
        String head = headComment(code);
        for (int at = 0; at < lines.length; at++) {
            Matcher constant = CONSTANT.matcher(lines[at]);
            boolean isNumber = constant.find() && !constant.group(1).equals("serialVersionUID");
            if (isNumber && !GROUND.matcher(head + commentAbove(lines, at)).find()) {
                bare.add(constant.group(1));
            }
        }
        return bare;
    }

    private static String headComment(String code) {
        Matcher head = Pattern.compile("(?s)/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:@\\w+(?:\\([^)]*\\))?\\s*)*"
                        + "(?:(?:public|final|abstract|sealed) )*(?:class|record|enum|interface) ")
                .matcher(code);
        return head.find() ? head.group(1) : "";
    }

    /** The comment that ends on the line before; a row of constants without a blank line shares the first one's. */
    private static String commentAbove(String[] lines, int at) {
        StringBuilder comment = new StringBuilder(lines[at]);
        for (int above = at - 1; above >= 0 && !lines[above].isBlank(); above--) {
            comment.insert(0, lines[above] + "\n");
        }
        return comment.toString();
    }

    private static boolean isBareRule(String code) {
        String plain = code.replaceAll("(?s)/\\*.*?\\*/|//[^\n]*", "")
                .replaceAll("\"(?:\\\\.|[^\"\\\\])*\"", "\"\"")
                .replaceAll("(?m)^import .*$|^package .*$", "");
        return LITERAL.matcher(plain).find() && !GROUND.matcher(code).find();
    }

    @Test
    void givesTheGroundOfEveryConstantThatIsCountedWith() throws IOException {
        List<String> bare = new ArrayList<>();
        int read = 0;
        for (String packageName : List.of("quantity", "plan", "course", "ledger", "supply", "safety", "wording")) {
            for (Path file : files(MAIN.resolve(packageName), ".java")) {
                String code = Files.readString(file);
                read += CONSTANT.matcher(code).results().toList().size();
                bareConstants(code).forEach(name -> bare.add(file.getFileName() + " " + name));
            }
        }
        assertEquals(List.of(), bare);
        assertTrue(read > 25, "constants: " + read);
    }

    @Test
    void givesTheGroundOfEveryNumberInARule() throws IOException {
        List<String> bare = new ArrayList<>();
        for (Path file : files(MAIN.resolve("safety"), ".java")) {
            if (isBareRule(Files.readString(file))) {
                bare.add(file.getFileName().toString());
            }
        }
        assertEquals(List.of(), bare);
    }

    @Test
    void marksEveryFileOfTheDemoAsInvented() throws IOException {
        List<String> bare = new ArrayList<>();
        for (Path file : files(Path.of("plans"), ".yaml")) {
            String text = Files.readString(file);
            String head = String.join("\n", text.lines().limit(4).toList());
            boolean isMedicine = file.getParent().endsWith("medicines");
            boolean hasSource = Pattern.compile("(?m)^source: .*(?:invented|leaflet|label)")
                    .matcher(text)
                    .find();
            if (isMedicine
                    ? !hasSource
                    : !head.toLowerCase(java.util.Locale.ROOT).contains("invented")) {
                bare.add(file.toString());
            }
        }
        assertEquals(List.of(), bare);
    }

    @Test
    void givesTheGroundOfEveryLimitOnWords() throws IOException {
        int limits = 0;
        for (Path file : files(Path.of("templates/wording"), "rules.properties")) {
            String[] lines = Files.readString(file).split("\n");
            for (int at = 0; at < lines.length; at++) {
                if (lines[at].matches("[a-z-]+ = \\d+(?:\\.\\d+)?")) {
                    limits++;
                    assertTrue(GROUND.matcher(commentAbove(lines, at)).find(), file + ": " + lines[at]);
                }
            }
        }
        assertTrue(limits > 1, "limits: " + limits);
    }

    /** Tests of published values, and of numbers worked out by hand. */
    @Test
    void givesTheGroundOfEveryCheckValue() throws IOException {
        List<Path> checks = new ArrayList<>(files(TESTS.resolve("outside"), "Test.java"));
        for (Path file : files(TESTS, "Test.java")) {
            if (file.getFileName()
                    .toString()
                    .matches(
                            "(?:Worked|Readability|Syllables|Designations|ProtocolDays|Contrast|"
                                    + "TypeSizes|DrawingType|RedFlags|Pemat|Style|TriggerInstants|VialShop|VialItems|Measuring).*")) {
                checks.add(file);
            }
        }
        assertTrue(checks.size() > 15, checks.toString());
        List<String> bare = new ArrayList<>();
        for (Path file : checks) {
            String code = Files.readString(file);
            if (!GROUND.matcher(headComment(code)).find()) {
                bareTests(code).forEach(name -> bare.add(file.getFileName() + " " + name));
            }
        }
        assertEquals(List.of(), bare);
    }

    /** Test methods with a number of their own in them and no ground, in a class that names none. */
    private static List<String> bareTests(String code) {
        List<String> bare = new ArrayList<>();
        Matcher test = Pattern.compile("(?s)(/\\*\\*(?:(?!\\*/).)*\\*/)?\\s*@(?:Parameterized)?Test(.*?)\n    }\n")
                .matcher(code);
        while (test.find()) {
            String body = test.group(2).replaceAll("\"(?:\\\\.|[^\"\\\\])*\"", text(test.group(2)) ? "7" : "\"\"");
            boolean hasNumber = LITERAL.matcher(body).find();
            if (hasNumber && !GROUND.matcher(test.group()).find()) {
                bare.add(test.group(2).replaceFirst("(?s).*?void (\\w+)\\(.*", "$1"));
            }
        }
        return bare;
    }

    /** Whether a table of values stands in texts. */
    private static boolean text(String body) {
        return body.contains("CsvSource");
    }

    @Test
    void findsAPlantedNumberWithoutAGround() {
        String bare = "/** A rule. */\nfinal class ARule {\n    private static final int MOST = 300;\n}\n";
        assertEquals(List.of("MOST"), bareConstants(bare));
        assertEquals(List.of(), bareConstants(bare.replace("A rule.", "A rule (ESHRE 2019).")));
        assertEquals(List.of(), bareConstants(bare.replace("    private", "    /** From memory. */\n    private")));
        assertTrue(isBareRule("final class ARule {\n boolean is(int dose) { return dose > 300; }\n}"));
        assertTrue(!isBareRule("final class ARule {\n boolean is(int dose) { return dose > 0; }\n}"));
        assertEquals(
                List.of("counts"),
                bareTests("\n    @Test\n    void counts() {\n        assertEquals(36, hours());\n    }\n"));
        assertEquals(
                List.of(),
                bareTests(
                        "\n    /** RFC 5545. */\n    @Test\n    void counts() {\n        assertEquals(36, hours());\n    }\n"));
    }
}

package cyclepacket.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Finding;
import cyclepacket.finding.FindingText;
import cyclepacket.finding.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Runs every case folder of the rules. A case is a demo plan with a few words changed: {@code edits.txt} names the plan
 * and the changes, a medicine beside it is added, and {@code findings.txt} holds what must be found: every stop, and
 * everything the rule under test says. A folder's name begins with the code of its rule.
 */
class RuleCasesTest {
    private static final Path CASES = Path.of("src/test/resources/conformance/rules");
    /**
     * {@code -Dcyclepacket.rule-family=true} asks only the rules whose codes begin with the same word, so that a changed
     * rule is tried by the cases of its family and not by all.
     */
    private static final boolean IS_FAMILY = Boolean.getBoolean("cyclepacket.rule-family");

    private static final Pattern BLOCK = Pattern.compile("\\S.*\\[([A-Z-]+)]\n(?: .*\n)*");
    private static final String EXPECTED = "findings.txt";

    @TestFactory
    Stream<DynamicTest> rejects() throws IOException {
        return cases("reject")
                .map(folder -> DynamicTest.dynamicTest(name(folder), () -> {
                    List<Finding> found = findings(folder);
                    assertTrue(
                            found.stream().anyMatch(finding -> isOwn(folder, finding)), "the rule itself says nothing");
                    assertEquals(expected(folder), shown(folder, found));
                }));
    }

    @TestFactory
    Stream<DynamicTest> acceptsJustInsideTheLimit() throws IOException {
        return cases("accept")
                .map(folder -> DynamicTest.dynamicTest(name(folder), () -> {
                    List<Finding> found = findings(folder);
                    // What was explained stays visible as a note; a stop or a warning would be no acceptance.
                    assertTrue(found.stream()
                            .filter(finding -> isOwn(folder, finding))
                            .allMatch(finding -> finding.severity() == Severity.NOTE));
                    assertEquals(expected(folder), shown(folder, found));
                }));
    }

    /** A rule that no case meets could be broken without anybody noticing. */
    @TestFactory
    Stream<DynamicTest> hasBothCasesOfEveryRule() {
        return SafetyCheck.rules()
                .map(rule -> DynamicTest.dynamicTest(rule.code(), () -> {
                    String folder = rule.code().toLowerCase(Locale.ROOT);
                    assertTrue(Files.isDirectory(CASES.resolve("reject").resolve(folder)), "reject/" + folder);
                    assertTrue(Files.isDirectory(CASES.resolve("accept").resolve(folder)), "accept/" + folder);
                }));
    }

    private static Stream<Path> cases(String kind) throws IOException {
        try (Stream<Path> folders = Files.list(CASES.resolve(kind))) {
            return folders.sorted().toList().stream();
        }
    }

    private static String name(Path folder) {
        return folder.getFileName().toString();
    }

    /** The rule whose code is the longest beginning of the folder's name. */
    private static Rule rule(Path folder) {
        return SafetyCheck.rules()
                .filter(rule -> (name(folder) + "-").startsWith(rule.code().toLowerCase(Locale.ROOT) + "-"))
                .max(Comparator.comparingInt(rule -> rule.code().length()))
                .orElseThrow(() -> new AssertionError("no rule for " + folder));
    }

    private static String family(String code) {
        return code.split("-")[0];
    }

    private static String expected(Path folder) throws IOException {
        Path file = folder.resolve(EXPECTED);
        String all = Files.exists(file) ? Files.readString(file) : "";
        return IS_FAMILY ? ofFamily(rule(folder), all) : all;
    }

    private static String ofFamily(Rule rule, String findings) {
        return BLOCK.matcher(findings)
                .results()
                .filter(block -> family(block.group(1)).equals(family(rule.code())))
                .map(MatchResult::group)
                .collect(Collectors.joining());
    }

    private static boolean isOwn(Path folder, Finding finding) {
        return finding.code().equals(rule(folder).code());
    }

    private static List<Finding> findings(Path folder) throws IOException {
        EditedDemo demo = EditedDemo.lay(folder, target(folder));
        String family = family(rule(folder).code());
        return (IS_FAMILY ? demo.findings(rule -> family(rule.code()).equals(family)) : demo.findings())
                .stream()
                        .filter(finding -> finding.isStop() || isOwn(folder, finding))
                        .toList();
    }

    private static Path target(Path folder) {
        return Path.of("target/rule-cases").resolve(CASES.relativize(folder));
    }

    /** Kept beside the laid-out files too, so that a changed sentence can be read there and copied. */
    private static String shown(Path folder, List<Finding> findings) throws IOException {
        String shown =
                FindingText.print(findings).replace(target(folder).toString().replace('\\', '/') + "/", "plans/");
        if (!IS_FAMILY) {
            Files.writeString(target(folder).resolve(EXPECTED), shown);
        }
        return shown;
    }
}

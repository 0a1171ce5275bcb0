package cyclepacket.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import cyclepacket.finding.Finding;
import cyclepacket.finding.FindingText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What holds for any damage to the demo files. A failure prints the seed that repeats it. */
class IntakeLaws {
    private static final int ROUNDS = 600;
    private static final long FIRST_SEED = 20_270_305;
    private static final String SCRAPS = "{}[],:#&*!|>'\"%@`-?\\~ \t\n019.eT=";
    private static final List<String> FILES = List.of(
            "patients/SM-04417-issue-2.yaml",
            "clinic.yaml",
            "protocols/antagonist-fixed.yaml",
            "medicines/fsh-pen.yaml",
            "medicines/antagonist-syringe.yaml");

    @TempDir
    static Path folder;

    @BeforeAll
    static void copyTheDemo() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("plans"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(file.toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
    }

    @Test
    void damagedFilesGiveRecordsOrAStopAndNeverAFault() throws IOException {
        int refused = 0;
        for (long seed = FIRST_SEED; seed < FIRST_SEED + ROUNDS; seed++) {
            refused += readDamaged(seed) ? 0 : 1;
        }
        assertTrue(refused > ROUNDS / 2, "most damage is noticed: " + refused);
        assertTrue(refused < ROUNDS, "some damage hits a comment and is harmless");
    }

    private static boolean readDamaged(long seed) throws IOException {
        Random random = new Random(seed);
        Path file = folder.resolve("plans").resolve(FILES.get(random.nextInt(FILES.size())));
        byte[] whole = Files.readAllBytes(file);
        String before = new String(whole, StandardCharsets.UTF_8);
        try {
            Files.writeString(file, damaged(before, random));
            Intake intake = PlanReader.read(folder.resolve("plans").resolve(FILES.get(0)));
            assertEquals(intake.files().value().isEmpty(), intake.files().hasStop());
            intake.files().findings().forEach(IntakeLaws::assertSound);
            return intake.files().value().isPresent();
        } catch (RuntimeException fault) {
            return fail("seed " + seed, fault);
        } catch (AssertionError broken) {
            throw new AssertionError("seed " + seed + ": " + broken.getMessage(), broken);
        } finally {
            Files.write(file, whole);
        }
    }

    private static void assertSound(Finding finding) {
        assertFalse(finding.text().endsWith("."), finding.text());
        assertFalse(finding.mend().endsWith("."), finding.mend());
        assertTrue(finding.place().line() >= 0);
        assertTrue(finding.place().column() <= finding.place().sourceLine().length() + 1, finding::toString);
        if (!finding.place().pointer().startsWith("/patient/name")) {
            assertFalse(FindingText.print(List.of(finding)).contains("Wren Hollis"), finding::toString);
        }
    }

    private static String damaged(String text, Random random) {
        String now = text;
        for (int times = 1 + random.nextInt(2); times > 0; times--) {
            now = switch (random.nextInt(6)) {
                case 0 -> now.substring(0, random.nextInt(now.length()));
                case 1 -> withoutOneCharacter(now, random);
                case 2 -> withScrap(now, random);
                case 3 -> withLineMoved(now, random);
                case 4 -> withWordSwapped(now, random);
                default -> withoutOneLine(now, random);
            };
            now = now.isEmpty() ? " " : now;
        }
        return now;
    }

    private static String withoutOneCharacter(String text, Random random) {
        int at = random.nextInt(text.length());
        return text.substring(0, at) + text.substring(at + 1);
    }

    private static String withScrap(String text, Random random) {
        int at = random.nextInt(text.length());
        return text.substring(0, at) + SCRAPS.charAt(random.nextInt(SCRAPS.length())) + text.substring(at);
    }

    private static String withLineMoved(String text, Random random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        lines.add(random.nextInt(lines.size()), lines.remove(random.nextInt(lines.size())));
        return String.join("\n", lines) + "\n";
    }

    private static String withoutOneLine(String text, Random random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        lines.remove(random.nextInt(lines.size()));
        return String.join("\n", lines) + "\n";
    }

    private static String withWordSwapped(String text, Random random) {
        String[] words = text.split("(?<=[ {},:\\[\\]])");
        words[random.nextInt(words.length)] = words[random.nextInt(words.length)];
        return String.join("", words);
    }
}

package cyclepacket.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.packet.Reckoning;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CountersignCommandTest {
    private static final String RIGHT = "7730418\n2027-03-05\n2027-03-09 212.5\n2027-03-15 08:30\n2027-03-13 19:30\n0\n"
            + "600 900 300\n5x0.25\n250\n";
    private static final String SIGNED = "\ncountersigned:";

    @TempDir
    Path folder;

    private Path plan;
    private String unsigned;

    @BeforeEach
    void takesTheSignatureOff() throws IOException {
        plan = TypedRun.copyOfPlans(folder).resolve("SM-04417-issue-3.yaml");
        String text = Files.readString(plan);
        unsigned = text.substring(0, text.indexOf(SIGNED) + 1);
        Files.writeString(plan, unsigned);
    }

    private TypedRun sign(String answers, String by) {
        return TypedRun.answering(answers, "countersign", plan.toString(), "--by", by, "--on", "2027-03-12");
    }

    @Test
    void addsOneLineWhenEveryValueAgrees() throws IOException {
        TypedRun run = sign(RIGHT, "R. Lindqvist (invented)");
        assertEquals(0, run.exit(), run.err());
        String signed = Files.readString(plan);
        assertTrue(signed.startsWith(unsigned));
        assertEquals(1, signed.substring(unsigned.length()).lines().count());
        assertTrue(TypedRun.of(
                        "packet",
                        plan.toString(),
                        "--out",
                        folder.resolve("out").toString())
                .out()
                .contains("final"));
    }

    @Test
    void takesTheDateOfBirthForTheNumber() {
        assertEquals(
                0, sign(RIGHT.replace("7730418", "1990-04-17"), "R. Lindqvist").exit());
    }

    @Test
    void namesWhatDiffersAndNeverThePlansValue() throws IOException {
        TypedRun run = sign(RIGHT.replace("19:30", "20:30").replace("212.5", "225"), "R. Lindqvist");
        assertEquals(1, run.exit());
        assertTrue(run.err().contains("Not the plan's value: the trigger time"), run.err());
        assertTrue(run.err().contains("Not the plan's value: the dose line of follitropin"), run.err());
        assertFalse(run.err().contains("19:30"), "the value itself would make the next try a copy");
        assertFalse(run.err().contains("212.5"), "the value itself would make the next try a copy");
        assertEquals(unsigned, Files.readString(plan));
    }

    @Test
    void refusesThePreparerAndAnEmptyName() throws IOException {
        assertEquals(1, sign(RIGHT, "t okonjo").exit());
        assertEquals(1, sign(RIGHT, " ").exit());
        assertEquals(1, sign("7730418\n", "R. Lindqvist").exit());
        assertEquals(unsigned, Files.readString(plan));
    }

    @Test
    void isVoidedByAnyChangedValueButNotByAComment() throws IOException {
        sign(RIGHT, "R. Lindqvist");
        String signed = Files.readString(plan);
        Files.writeString(plan, "# a remark\n" + signed);
        assertFalse(isVoid(), "a comment changes nothing that was compared");
        for (String[] edit : new String[][] {
            {"lot: FA-2388", "lot: FA-2389"},
            {"evening: \"20:30\"", "evening: \"20:45\""},
            {"avoid: []", "avoid: [nickel]"},
            {"text-size: standard", "text-size: large"},
            {"expires: 2028-04-30", "expires: 2028-04-29"}
        }) {
            assertTrue(signed.contains(edit[0]), edit[0]);
            Files.writeString(plan, signed.replace(edit[0], edit[1]));
            assertTrue(isVoid(), edit[1]);
        }
        Files.writeString(plan, signed);
        Path pen = folder.resolve("plans/medicines/fsh-pen.yaml");
        Files.writeString(pen, Files.readString(pen).replace("hold: 10 s", "hold: 9 s"));
        assertTrue(isVoid(), "the medicine file was compared too");
    }

    private boolean isVoid() throws IOException {
        return Reckoning.of(plan).findings().stream()
                .anyMatch(found -> found.code().equals("COUNTERSIGN-VOID"));
    }
}

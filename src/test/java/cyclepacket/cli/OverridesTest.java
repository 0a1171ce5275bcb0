package cyclepacket.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.pdf.Typesetter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A warning that somebody looked at: reason and name, for the clinic's eyes, until the next issue. */
class OverridesTest {
    private static final String WHY = "the pharmacy has promised a box for Thursday";
    private static final String LINE =
            "overrides:\n  - {code: SUPPLY-SHORT, place: /on-hand/fsh-pen, reason: " + WHY + ", by: A. Nurse}\n";

    @TempDir
    Path folder;

    private Path plan;
    private Path out;

    @BeforeEach
    void copies() throws IOException {
        plan = TypedRun.copyOfPlans(folder).resolve("SM-04417-issue-2.yaml");
        out = folder.resolve("out");
        Files.writeString(plan, Files.readString(plan).replace("overrides: []\n", LINE));
    }

    private String text(String file) throws IOException {
        return Typesetter.textOf(
                        Files.readAllBytes(out.resolve("SM-04417/issue-2").resolve(file)))
                .replaceAll("[\\s\u00a0]+", " ");
    }

    @Test
    void arePrintedOnTheChartCopyAlone() throws IOException {
        TypedRun run = TypedRun.of("packet", plan.toString(), "--out", out.toString());
        assertEquals(0, run.exit(), run.err());
        assertTrue(text("chart.pdf").contains(WHY), text("chart.pdf"));
        assertTrue(text("chart.pdf").contains("A. Nurse"));
        assertFalse(text("packet.pdf").contains("promised"));
        assertFalse(text("packet.pdf").contains("A. Nurse"));
        String register = Files.readString(out.resolve("SM-04417/register.json"));
        assertTrue(register.contains("SUPPLY-SHORT /on-hand/fsh-pen: " + WHY + " (A. Nurse)"), register);
    }

    @Test
    void needAReasonAndAName() throws IOException {
        for (String half :
                new String[] {LINE.replace(", by: A. Nurse", ""), LINE.replace("reason: " + WHY + ", ", "")}) {
            Files.writeString(plan, Files.readString(plan).replace(LINE, half));
            assertEquals(1, TypedRun.of("check", plan.toString()).exit(), half);
            Files.writeString(plan, Files.readString(plan).replace(half, LINE));
        }
    }

    @Test
    void lapseWithTheNextIssue() throws IOException {
        TypedRun run = TypedRun.of(
                "revise",
                plan.toString(),
                "--order",
                "ORD-7",
                "--by",
                "T. Okonjo (invented)",
                "--to",
                "the patient",
                "--on",
                "2027-03-09",
                "--read-back",
                "--hour",
                "evening=21:00@2027-03-09",
                "--out",
                out.toString(),
                "--yes");
        assertEquals(0, run.exit(), run.err());
        assertFalse(Files.readString(plan).contains("promised"), "an accepted warning of one issue");
        assertTrue(TypedRun.of("check", plan.toString()).out().contains("[SUPPLY-SHORT]"));
    }
}

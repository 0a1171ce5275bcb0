package cyclepacket.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.pdf.Typesetter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BatchCommandTest {
    @TempDir
    Path folder;

    private TypedRun batch(Path plans, String... more) {
        List<String> words = new ArrayList<>(List.of("batch", plans.toString(), "--on", "2027-03-12"));
        words.addAll(List.of("--out", folder.resolve("out").toString(), "--workers", "2"));
        words.addAll(List.of(more));
        return TypedRun.of(words.toArray(String[]::new));
    }

    @Test
    void printsWhatIsFinalAndListsTheRest() throws IOException {
        Path plans = TypedRun.copyOfPlans(folder);
        Files.writeString(plans.resolve("broken.yaml"), "plan: [x\n");
        Files.writeString(
                plans.resolve("off-dial.yaml"),
                Files.readString(plans.resolve("SM-04417.yaml"))
                        .replace("SM-04417", "SM-2")
                        .replace("amount: 187.5", "amount: 190"));
        Files.writeString(
                plans.resolve("draft.yaml"),
                Files.readString(plans.resolve("SM-04417.yaml")).replace("SM-04417", "SM-3"));
        TypedRun run = batch(plans);
        assertEquals(1, run.exit(), "a plan failed");
        assertTrue(run.out().contains("6 plans in the folder: 1 printed, 3 listed, 2 failed, 0 without"), run.out());
        assertTrue(run.out().contains("FAILED  broken.yaml: "), run.out());
        assertTrue(run.out().contains("FAILED  SM-2, issue 1: 190 units is not a setting"), run.out());
        assertTrue(run.out().contains("listed  SM-3, issue 1: a draft: nobody has countersigned it"), run.out());
        assertTrue(run.err().lines().anyMatch(line -> line.matches("\\d of 6  printed  SM-04417, issue 3")), run.err());
        assertFalse((run.out() + run.err()).contains("Hollis"), "no name on the screen");
        Path stack = folder.resolve("out/batch-2027-03-12");
        assertEquals(
                List.of("000-cover-list.pdf", "001-a-separator.pdf", "001-b-packet.pdf"),
                TypedRun.filesBelow(stack).stream()
                        .map(file -> file.getFileName().toString())
                        .toList());
        String separator = text(stack.resolve("001-a-separator.pdf"));
        assertTrue(separator.contains("Wren Hollis") && separator.contains("17 April 1990"), separator);
        int pages = Typesetter.pageTexts(Files.readAllBytes(stack.resolve("001-b-packet.pdf")))
                .size();
        assertTrue(separator.contains(pages + " pages follow"), separator);
        String cover = text(stack.resolve("000-cover-list.pdf"));
        assertTrue(cover.contains("SM-3, issue 1") && cover.contains("a draft"), cover);
        assertFalse(cover.contains("Hollis"), "initials only");
    }

    @Test
    void makesTheSameBytesAsAlone() throws IOException {
        Path plans = TypedRun.copyOfPlans(folder);
        assertEquals(0, batch(plans).exit());
        Path alone = folder.resolve("alone");
        TypedRun.of("packet", plans.resolve("SM-04417-issue-3.yaml").toString(), "--out", alone.toString());
        for (String file : List.of("packet.pdf", "chart.pdf", "packet.json")) {
            assertArrayEquals(
                    Files.readAllBytes(alone.resolve("SM-04417/issue-3").resolve(file)),
                    Files.readAllBytes(folder.resolve("out/SM-04417/issue-3").resolve(file)),
                    file);
        }
    }

    /** What an editor or a killed program left must not retire a plan. */
    @Test
    void takesNoHiddenFileForAPlan() throws IOException {
        Path plans = TypedRun.copyOfPlans(folder);
        Files.writeString(
                plans.resolve(".changing-1.yaml"),
                Files.readString(plans.resolve("SM-04417-issue-3.yaml")).replace("issue: 3", "issue: 4"));
        TypedRun run = batch(plans);
        assertTrue(run.out().contains("3 plans in the folder: 1 printed, 2 listed"), run.out());
        assertTrue(run.err().contains("3 of 3  printed  SM-04417, issue 3"), run.err());
    }

    @Test
    void saysThatAFileIsNoFolder() throws IOException {
        TypedRun run = batch(TypedRun.copyOfPlans(folder).resolve("SM-04417.yaml"));
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("is no folder"), run.err());
    }

    @Test
    void leavesOutWhoHasNoVisitThatDay() throws IOException {
        Path plans = TypedRun.copyOfPlans(folder);
        TypedRun run = TypedRun.of(
                "batch",
                plans.toString(),
                "--on",
                "2027-03-20",
                "--out",
                folder.resolve("out").toString());
        assertEquals(0, run.exit());
        assertTrue(run.out().contains("0 printed, 0 listed, 0 failed, 3 without a visit on 2027-03-20"), run.out());
        TypedRun all = TypedRun.of(
                "batch",
                plans.toString(),
                "--on",
                "2027-03-20",
                "--all",
                "--out",
                folder.resolve("out").toString());
        assertTrue(all.out().contains("1 printed, 2 listed"), all.out());
    }

    private static String text(Path pdf) throws IOException {
        return Typesetter.textOf(Files.readAllBytes(pdf)).replace('\u00a0', ' ');
    }
}

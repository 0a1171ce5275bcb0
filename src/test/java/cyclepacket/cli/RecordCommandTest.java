package cyclepacket.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordCommandTest {
    @TempDir
    Path folder;

    private Path plan;
    private String before;

    @BeforeEach
    void copies() throws IOException {
        plan = TypedRun.copyOfPlans(folder).resolve("SM-04417-issue-2.yaml");
        before = Files.readString(plan);
    }

    private TypedRun record(String medicine, String evening, String... facts) {
        List<String> words =
                new ArrayList<>(List.of("record", plan.toString(), "--medicine", medicine, "--evening", evening));
        words.addAll(List.of(facts));
        return TypedRun.of(words.toArray(String[]::new));
    }

    /** The line that was added, when nothing else changed. */
    private String added() throws IOException {
        String now = Files.readString(plan);
        int from = 0;
        while (from < before.length() && before.charAt(from) == now.charAt(from)) {
            from++;
        }
        int added = now.length() - before.length();
        assertEquals(before, now.substring(0, from) + now.substring(from + added), "every other byte stays");
        // The first character that differs may already be shared with the line below.
        String shared = now.substring(0, from);
        int lineStart = Math.max(shared.lastIndexOf('\n'), shared.lastIndexOf('\r')) + 1;
        return now.substring(lineStart, lineStart + added).strip();
    }

    @Test
    void saysWhatANumberMeansAndKeepsEveryOtherByte() throws IOException {
        before = before.replace("\n", "\r\n").replace("record:\r\n", "record:   # told, oldest first\r\n\r\n");
        Files.writeString(plan, before);
        TypedRun run = record("fsh-pen", "2027-03-09", "--given", "212.5", "--window", "0");
        assertEquals(0, run.exit(), run.err());
        assertEquals("- {date: 2027-03-09, medicine: fsh-pen, given: 212.5, window: 0}", added());
        assertTrue(run.out().contains("the whole setting went in"), run.out());
        assertTrue(run.out().contains("The next end stays as it was: box 2 maybe Friday 12 March"), run.out());
    }

    @Test
    void triesWithoutWriting() throws IOException {
        TypedRun run = record("fsh-pen", "2027-03-09", "--given", "212.5", "--window", "0", "--try");
        assertEquals(0, run.exit());
        assertTrue(run.out().contains("Nothing was written."), run.out());
        assertEquals(before, Files.readString(plan));
    }

    @Test
    void namesTheFillAndTheEndBeforeAndAfter() {
        plan = plan.resolveSibling("SM-04417.yaml");
        for (String evening : List.of("2027-03-05", "2027-03-06", "2027-03-07")) {
            record("fsh-pen", evening, "--given", "187.5", "--window", "0");
        }
        String[] told = {"--given", "187.5", "--window", "87.5", "--plunger", "end", "--read-back"};
        String said = record("fsh-pen", "2027-03-08", told).out();
        assertTrue(
                said.contains("box 1 gave 662.5 units. A box of 600 units gives 600 to 720 units: this fits."), said);
        assertTrue(said.contains("87.5 units, is what was still owed; it came from the new box."), said);
        assertTrue(said.contains("Next end before this: box 1 Monday 8 March, number 30 to 150 units."), said);
        assertTrue(said.contains("Next end now: box 2 maybe Saturday 13 March"), said);
    }

    @Test
    void writesWhatCannotBeInQuestionAndStopsUntilItIsExplained() throws IOException {
        TypedRun run = record(
                "fsh-pen", "2027-03-09", "--given", "212.5", "--window", "200", "--plunger", "end", "--read-back");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("IN QUESTION: this number means an impossible fill"), run.out());
        assertTrue(added().endsWith("read-back: true, in-question: true}"), added());
        assertTrue(isRefused("RECORD-IN-QUESTION"));
        TypedRun why = record("fsh-pen", "2027-03-09", "--explain", "--reason", "the box leaked", "--by", "A. Nurse");
        assertEquals(0, why.exit(), why.err());
        assertFalse(isRefused("RECORD-IN-QUESTION"));
        assertFalse(isRefused("RECORD-FILL"));
        assertTrue(Files.readString(plan).contains("window: 200"), "the fact itself stays");
    }

    private boolean isRefused(String code) throws IOException {
        String text = Files.readString(plan);
        Files.writeString(plan, text.replace("on: 2027-03-09}\n", "on: 2027-03-10}\n"));
        TypedRun check = TypedRun.of("check", plan.toString());
        Files.writeString(plan, text);
        return check.out().lines().anyMatch(line -> line.contains(": stop: ") && line.contains("[" + code + "]"));
    }

    @Test
    void keepsALateDoseOnItsEveningAndAnOlderLineInItsPlace() throws IOException {
        record("fsh-pen", "2027-03-10", "--missed");
        TypedRun run =
                record("fsh-pen", "2027-03-09", "--given", "212.5", "--window", "0", "--late-at", "2027-03-10T07:05");
        assertTrue(run.out().contains("It belongs to the evening of Tuesday 9 March."), run.out());
        String now = Files.readString(plan);
        assertTrue(
                now.indexOf("date: 2027-03-09, medicine") < now.indexOf("date: 2027-03-10, medicine"), "oldest first");
        assertTrue(now.contains("at: \"2027-03-10T07:05\""), now);
    }

    @Test
    void takesEveryKindOfFact() throws IOException {
        assertEquals(0, record("fsh-pen", "2027-03-09", "--given", "unknown").exit());
        assertEquals("- {date: 2027-03-09, medicine: fsh-pen, given: unknown}", added());
        Files.writeString(plan, before);
        TypedRun part = record(
                "fsh-pen", "2027-03-09", "--given", "100", "--window", "112.5", "--plunger", "end", "--read-back");
        assertTrue(part.out().contains("Not given: 112.5 units. Ask the prescriber."), part.out());
        Files.writeString(plan, before);
        TypedRun wrong = record("trigger-syringe", "2027-03-09", "--given", "250", "--instead-of", "fsh-pen");
        assertTrue(wrong.out().contains("Tell the prescriber now."), wrong.out());
        assertTrue(added().contains("instead-of: fsh-pen, in-question: true"), added());
        Files.writeString(plan, before);
        assertEquals(0, record("fsh-pen", "2027-03-09", "--lost", "25").exit());
        assertEquals("- {date: 2027-03-09, medicine: fsh-pen, lost: 25}", added());
    }

    @Test
    void countsBoxesThatComeAndGo() throws IOException {
        TypedRun came =
                record("fsh-pen", "2027-03-09", "--received", "300", "--lot", "FA-2388", "--expires", "2028-04-30");
        assertEquals(0, came.exit(), came.err());
        assertTrue(came.out().contains("box 2 (900 units), box 3 (300 units)"), came.out());
        TypedRun gone =
                record("fsh-pen", "2027-03-09", "--discarded", "3", "--reason", "frozen", "--by", "A. Nurse", "--try");
        assertTrue(gone.out().contains("in loading order: box 2 (900 units)."), gone.out());
        TypedRun inUse = record("fsh-pen", "2027-03-09", "--discarded", "2", "--reason", "frozen", "--by", "A. Nurse");
        assertTrue(inUse.out().contains("in loading order: box 3 (300 units)."), inUse.out());
        assertTrue(inUse.out().contains("Enough for sure until Tuesday 9 March."), inUse.out());
        assertTrue(Files.readString(plan).contains("loaded: 3, reason: frozen, by: A. Nurse"));
    }

    @Test
    void asksWhetherABoxWasLoadedBeforeItsTurn() throws IOException {
        record("fsh-pen", "2027-03-09", "--received", "300");
        TypedRun run = record("fsh-pen", "2027-03-09", "--given", "212.5", "--loaded", "4");
        assertTrue(run.out().contains("box 4 was loaded, and box 3 comes next"), run.out());
        assertTrue(Files.readString(plan).contains("loaded: 4, in-question: true"));
    }

    @Test
    void takesTheFirstBoxOfACycleAndTheOneThatIsInThePen() throws IOException {
        plan = plan.resolveSibling("SM-04417.yaml");
        TypedRun first = record("fsh-pen", "2027-03-05", "--given", "187.5", "--window", "0", "--loaded", "1");
        assertFalse(first.out().contains("IN QUESTION"), first.out());
        assertTrue(first.out().contains("Box 1 is in the pen from this evening on."), first.out());
        assertTrue(first.out().contains("The next end stays as it was: box 1 Monday 8 March"), first.out());
        TypedRun again = record("fsh-pen", "2027-03-06", "--given", "187.5", "--loaded", "1", "--try");
        assertTrue(again.out().contains("box 1 was loaded, and box 1 is in the pen already"), again.out());
        plan = plan.resolveSibling("SM-04417-issue-2.yaml");
        TypedRun known = record("fsh-pen", "2027-03-08", "--loaded", "2");
        assertFalse(known.out().contains("IN QUESTION"), known.out());
    }

    @Test
    void asksAboutALateDoseBeforeItsEvening() throws IOException {
        TypedRun run =
                record("fsh-pen", "2027-03-09", "--given", "212.5", "--window", "0", "--late-at", "2027-03-08T23:00");
        assertTrue(run.out().contains("IN QUESTION: a dose of the evening of Tuesday 9 March 2027"), run.out());
        assertTrue(added().endsWith("in-question: true}"), added());
    }

    @Test
    void saysWhenNoBoxIsLeft() {
        TypedRun run = record("fsh-pen", "2027-03-09", "--discarded", "2", "--reason", "frozen", "--by", "A. Nurse");
        assertTrue(run.out().contains("No box is left at home. Order today."), run.out());
    }

    @Test
    void saysInOneLineWhatADateLooksLike() throws IOException {
        TypedRun run = record("fsh-pen", "9.3.2027", "--missed");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("\"9.3.2027\" is not a date; write for example 2027-03-09"), run.err());
        assertTrue(run.err().lines().count() <= 3, run.err());
        TypedRun slip = record("fsh-pen", "2027-03-09", "--mised");
        assertEquals(2, slip.exit());
        assertTrue(slip.err().contains("Did you mean: --missed"), slip.err());
        assertEquals(before, Files.readString(plan));
    }

    @Test
    void dividesALineThatTellsOfSeveralAlike() throws IOException {
        TypedRun run = record(
                "antagonist-syringe", "2027-03-09", "--discarded", "2", "--reason", "dropped", "--by", "A. Nurse");
        assertEquals(0, run.exit(), run.err());
        assertTrue(Files.readString(plan)
                .contains("[{size: 0.25, count: 1, expires: 2028-02-28}, {size: 0.25, expires: 2028-02-28, "
                        + "discarded: 2027-03-09, reason: dropped}, {size: 0.25, count: 3, expires: 2028-02-28}]"));
    }

    @Test
    void refusesWhatSaysNothing() throws IOException {
        assertEquals(2, record("fsh-pen", "2027-03-09").exit());
        assertEquals(2, record("fsh-pen", "2027-03-09", "--given", "some").exit());
        assertEquals(
                2,
                record("fsh-pen", "2027-03-09", "--discarded", "7", "--reason", "x", "--by", "y")
                        .exit());
        assertEquals(2, record("fsh-pen", "2027-03-09", "--discarded", "2").exit());
        assertEquals(2, record("no-pen", "2027-03-09", "--missed").exit());
        assertEquals(before, Files.readString(plan));
    }
}

package cyclepacket.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.intake.Said;
import cyclepacket.pdf.Typesetter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReviseCommandTest {
    private static final String BY = "T. Okonjo (invented)";

    @TempDir
    Path folder;

    private Path plans;
    private Path plan;
    private Path out;

    @BeforeEach
    void copies() throws IOException {
        plans = TypedRun.copyOfPlans(folder);
        plan = plans.resolve("SM-04417.yaml");
        out = folder.resolve("out");
    }

    private TypedRun record(String medicine, String evening, String... facts) {
        List<String> words =
                new ArrayList<>(List.of("record", plan.toString(), "--medicine", medicine, "--evening", evening));
        words.addAll(List.of(facts));
        TypedRun run = TypedRun.of(words.toArray(String[]::new));
        assertEquals(0, run.exit(), run.err());
        return run;
    }

    private TypedRun revise(String order, String on, String... changes) {
        return answering("", order, on, changes);
    }

    private TypedRun answering(String answer, String order, String on, String... changes) {
        List<String> words = new ArrayList<>(List.of("revise", plan.toString(), "--order", order, "--by", BY));
        words.addAll(List.of("--to", "the patient", "--on", on, "--read-back", "--out", out.toString()));
        words.addAll(List.of(changes));
        return TypedRun.answering(answer, words.toArray(String[]::new));
    }

    private void livesToTheFirstScan() {
        for (String evening : List.of("2027-03-05", "2027-03-06", "2027-03-07")) {
            record("fsh-pen", evening, "--given", "187.5", "--window", "0");
        }
        record("fsh-pen", "2027-03-08", "--given", "187.5", "--window", "87.5", "--plunger", "end", "--read-back");
    }

    /** What the plan says, but for the keys that only a command writes. */
    private static String said(Path file) throws IOException {
        return Said.of(Files.readAllBytes(file), "revised", "countersigned").replaceAll(",\"received\":\"[^\"]*\"", "");
    }

    @Test
    void makesTheDemosIssuesTwoAndThreeByCommandsAlone() throws IOException {
        livesToTheFirstScan();
        TypedRun second = revise(
                "ORD-1192",
                "2027-03-09",
                "--dose",
                "fsh-pen=212.5@2027-03-09",
                "--anchor",
                "R=2027-03-15T08:30",
                "--yes");
        assertEquals(0, second.exit(), second.err());
        assertTrue(second.out().contains("now    follitropin: 212.5 units at 8:30 p.m. (20:30)."), second.out());
        assertTrue(
                second.out().contains("Say: follitropin, two-one-two-point-five units, from Tuesday 9 March on."),
                second.out());
        assertEquals(said(plans.resolve("SM-04417-issue-2.yaml")), said(plan));
        for (String evening : List.of("2027-03-09", "2027-03-10", "2027-03-11")) {
            record("fsh-pen", evening, "--given", "212.5", "--window", "0");
        }
        for (String evening : List.of("2027-03-10", "2027-03-11")) {
            record("antagonist-syringe", evening, "--given", "0.25");
        }
        record("fsh-pen", "2027-03-12", "--received", "300", "--lot", "FA-2388", "--expires", "2028-04-30");
        TypedRun third = revise("ORD-1201", "2027-03-12", "--call", "T=2027-03-13T19:30", "--yes");
        assertEquals(0, third.exit(), third.err());
        assertEquals(
                said(plans.resolve("SM-04417-issue-3.yaml")).replaceAll("\"fsh-pen\".*", ""),
                said(plan).replaceAll("\"fsh-pen\".*", ""));
        assertEquals(sortedFields(plans.resolve("SM-04417-issue-3.yaml")), sortedFields(plan));
    }

    /** Medicines of one evening may be recorded in either order. */
    private static List<String> sortedFields(Path file) throws IOException {
        return List.of(said(file).split("\\},\\{|\\[\\{|\\}\\]")).stream()
                .sorted()
                .toList();
    }

    @Test
    void writesNothingWithoutAYes() throws IOException {
        livesToTheFirstScan();
        String before = Files.readString(plan);
        assertEquals(
                1,
                answering("no\n", "ORD-2", "2027-03-09", "--dose", "fsh-pen=200@2027-03-09")
                        .exit());
        assertEquals(
                1,
                answering("", "ORD-2", "2027-03-09", "--dose", "fsh-pen=200@2027-03-09")
                        .exit());
        assertEquals(before, Files.readString(plan));
        assertEquals(
                0,
                answering("yes\n", "ORD-2", "2027-03-09", "--dose", "fsh-pen=200@2027-03-09")
                        .exit());
        assertTrue(Files.readString(plan).contains("issue: 2\nreplaces: 1\n"));
    }

    @Test
    void refusesADoseThatNoDialHasAndEveningsThatNobodyTold() throws IOException {
        String before = Files.readString(plan);
        TypedRun untold = revise("ORD-2", "2027-03-09", "--dose", "fsh-pen=200@2027-03-09", "--yes");
        assertEquals(1, untold.exit());
        assertTrue(untold.err().contains("[RECORD-GAP]"), untold.err());
        assertEquals(before, Files.readString(plan));
        livesToTheFirstScan();
        String told = Files.readString(plan);
        TypedRun off = revise("ORD-2", "2027-03-09", "--dose", "fsh-pen=190@2027-03-09", "--yes");
        assertEquals(1, off.exit());
        assertTrue(off.err().contains("[DOSE-OFF-DIAL]"), off.err());
        assertEquals(
                2, revise("ORD-2", "2027-03-09", "--dose", "fsh-pen", "--yes").exit());
        assertEquals(
                2,
                revise("ORD-2", "2027-03-09", "--hour", "noon=12:00@2027-03-09", "--yes")
                        .exit());
        assertEquals(
                2,
                revise("ORD-2", "2027-03-09", "--hold", "no-pen@2027-03-09", "--yes")
                        .exit());
        assertEquals(told, Files.readString(plan));
    }

    @Test
    void letsCountersignAndOverridesLapse() throws IOException {
        plan = plans.resolve("SM-04417-issue-3.yaml");
        String text = Files.readString(plan);
        Files.writeString(
                plan,
                text.replace(
                        "overrides: []",
                        "overrides:\n  - {code: X, place: /a, reason: seen, by: A. Nurse}  # looked at\n"));
        TypedRun run = revise("ORD-1202", "2027-03-12", "--hour", "evening=21:00@2027-03-12", "--yes");
        assertEquals(0, run.exit(), run.err());
        String now = Files.readString(plan);
        assertFalse(now.contains("countersigned"), now);
        assertTrue(now.contains("overrides: []\n"), now);
        assertTrue(run.out().contains("9:00 p.m. (21:00)"), run.out());
        assertEquals(text.lines().findFirst(), now.lines().findFirst());
    }

    @Test
    void holdsStartsAndStopsAMedicine() throws IOException {
        livesToTheFirstScan();
        TypedRun run = revise(
                "ORD-2",
                "2027-03-09",
                "--anchor",
                "R=2027-03-15T08:30",
                "--hold",
                "fsh-pen@2027-03-09",
                "--start",
                "antagonist-syringe@2027-03-11",
                "--yes");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("now    follitropin: NO INJECTION."), run.out());
        TypedRun ledger = TypedRun.of("ledger", plan.toString(), "--csv");
        assertTrue(ledger.out().contains("fsh-pen,units,2027-03-09,S5,0,planned"), ledger.out());
        assertFalse(ledger.out().contains("antagonist-syringe,mg,2027-03-10"), ledger.out());
        assertTrue(ledger.out().contains("antagonist-syringe,mg,2027-03-11"), ledger.out());
    }

    @Test
    void endsACycleOnOnePage() throws IOException {
        livesToTheFirstScan();
        TypedRun run = revise("ORD-2", "2027-03-09", "--cancel", "2027-03-09", "--yes");
        assertEquals(0, run.exit(), run.err());
        TypedRun packet = TypedRun.of("packet", plan.toString(), "--out", out.toString());
        assertEquals(0, packet.exit(), packet.err());
        List<String> pages = Typesetter.pageTexts(Files.readAllBytes(out.resolve("SM-04417/issue-2/packet.pdf")));
        assertEquals(1, pages.size());
        String page = pages.get(0).replace('\u00a0', ' ');
        assertTrue(page.contains("STOP. Take no more injections."), page);
        assertTrue(page.contains("REPLACES all other pages"), page);
        assertTrue(page.contains("until Tuesday 23 March"), page);
        assertTrue(page.contains("+1 207 555 0177") && page.contains("+1 207 555 0142"), "both numbers: " + page);
    }

    /** Text of 18 points needs both sides of the sheet; what to stop and when to call emergency stand on the first. */
    @Test
    void keepsTheStopPageOnOneSheetInLargePrint() throws IOException {
        livesToTheFirstScan();
        Files.writeString(
                plan,
                Files.readString(plan)
                        .replace("text-size: standard", "text-size: large")
                        .replace("paper: letter", "paper: A4"));
        revise("ORD-2", "2027-03-09", "--cancel", "2027-03-09", "--yes");
        TypedRun packet = TypedRun.of("packet", plan.toString(), "--out", out.toString());
        assertEquals(0, packet.exit(), packet.err());
        List<String> pages = Typesetter.pageTexts(Files.readAllBytes(out.resolve("SM-04417/issue-2/packet.pdf")));
        assertEquals(2, pages.size());
        assertTrue(pages.get(0).contains("You think of hurting yourself."), pages.get(0));
        assertTrue(pages.get(1).contains("Call us within the hour"), pages.get(1));
    }

    /** What issue 3 changed would be lost without a word. */
    @Test
    void refusesAPlanThatALaterIssueHasOvertaken() throws IOException {
        TypedRun.of("packet", plans.resolve("SM-04417-issue-3.yaml").toString(), "--out", out.toString());
        plan = plans.resolve("SM-04417-issue-2.yaml");
        String before = Files.readString(plan);
        TypedRun run = revise("ORD-2", "2027-03-09", "--hour", "evening=21:00@2027-03-09", "--yes");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("This plan is issue 2, and issue 3 was printed as final since."), run.err());
        assertEquals(before, Files.readString(plan));
    }

    /** Nothing that was planned stands in the way of a stop, not even a trigger that was told. */
    @Test
    void endsACycleWhoseTriggerWasCalled() throws IOException {
        plan = plans.resolve("SM-04417-issue-3.yaml");
        TypedRun.of("packet", plan.toString(), "--out", out.toString());
        assertTrue(
                Files.readString(out.resolve("SM-04417/issue-3/calendar.ics")).contains("STATUS:CONFIRMED"));
        TypedRun run = revise("ORD-9", "2027-03-12", "--cancel", "2027-03-12", "--yes");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("now    choriogonadotropin alfa: nothing"), run.out());
        TypedRun sign = TypedRun.answering(
                "7730418\n2027-03-05\n2027-03-12\n", "countersign", plan.toString(), "--by", "R. Lindqvist (invented)");
        assertEquals(0, sign.exit(), sign.err());
        TypedRun packet = TypedRun.of("packet", plan.toString(), "--out", out.toString());
        assertTrue(packet.out().contains("   final"), packet.out() + packet.err());
        Path issue = out.resolve("SM-04417/issue-4");
        List<String> pages = Typesetter.pageTexts(Files.readAllBytes(issue.resolve("packet.pdf")));
        assertEquals(1, pages.size());
        assertFalse(pages.get(0).contains("DRAFT"), pages.get(0));
        String calendar = Files.readString(issue.resolve("calendar.ics"));
        assertTrue(calendar.contains("STATUS:CANCELLED") && !calendar.contains("CONFIRMED"), calendar);
    }

    @Test
    void swapsAProductAndSaysWhatMustBeTaughtAgain() throws IOException {
        livesToTheFirstScan();
        Path medicines = folder.resolve("plans/medicines");
        Files.writeString(
                medicines.resolve("other-pen.yaml"),
                Files.readString(medicines.resolve("fsh-pen.yaml"))
                        .replace("medicine: fsh-pen", "medicine: other-pen")
                        .replace("name: follitropin", "name: follitropin delta")
                        .replace("door-name: evening pen", "door-name: new pen"));
        Path clinic = folder.resolve("plans/clinic.yaml");
        Files.writeString(
                clinic,
                Files.readString(clinic)
                        .replace("    fsh-pen: Call", "    other-pen: Call us first.\n    fsh-pen: Call"));
        record("other-pen", "2027-03-09", "--received", "900", "--expires", "2028-04-30");
        TypedRun run = revise(
                "ORD-2",
                "2027-03-09",
                "--anchor",
                "R=2027-03-15T08:30",
                "--swap",
                "fsh-pen=other-pen@2027-03-09",
                "--dose",
                "other-pen=212.5@2027-03-09",
                "--yes");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("The teach-back of fsh-pen is void."), run.out());
        assertTrue(run.out().contains("Teach again with other-pen"), run.out());
        assertTrue(run.out().contains("now    follitropin delta: 212.5 units"), run.out());
        assertTrue(run.out().contains("Say: follitropin delta takes the place of follitropin from Tuesday"), run.out());
        TypedRun packet = TypedRun.of("packet", plan.toString(), "--out", out.toString());
        assertEquals(0, packet.exit(), packet.err());
        String chart = Typesetter.textOf(Files.readAllBytes(out.resolve("SM-04417/issue-2/chart.pdf")));
        assertTrue(chart.replaceAll("\\s+", " ").contains("The teach-back of follitropin is void."), chart);
        String ledger = TypedRun.of("ledger", plan.toString(), "--csv").out();
        assertFalse(ledger.contains("fsh-pen,units,2027-03-09"), ledger);
        assertTrue(ledger.contains("other-pen,units,2027-03-09"), ledger);
    }

    @Test
    void letsOneOfTwoWinAndTellsTheOther() throws Exception {
        livesToTheFirstScan();
        ExecutorService two = Executors.newFixedThreadPool(2);
        Callable<TypedRun> one = () -> revise("ORD-2", "2027-03-09", "--dose", "fsh-pen=200@2027-03-09", "--yes");
        Callable<TypedRun> other = () -> revise("ORD-3", "2027-03-09", "--dose", "fsh-pen=225@2027-03-09", "--yes");
        List<TypedRun> runs = new ArrayList<>();
        for (Future<TypedRun> run : two.invokeAll(List.of(one, other))) {
            runs.add(run.get());
        }
        two.shutdown();
        String now = Files.readString(plan);
        // Either both read the same issue and one is told, or the second one starts from what the first one wrote.
        long told = runs.stream()
                .filter(run -> run.exit() == 1 && run.err().contains("Somebody else changed"))
                .count();
        assertEquals(told == 1, now.contains("issue: 2\n"), now);
        assertEquals(told == 0, now.contains("issue: 3\n"), now);
    }

    @Test
    void saysOnThePhoneWhatEachChangeMeans() throws IOException {
        livesToTheFirstScan();
        String lived = Files.readString(plan);
        TypedRun hold = revise("ORD-2", "2027-03-09", "--hold", "fsh-pen@2027-03-09..2027-03-10", "--yes");
        assertTrue(
                hold.out().contains("Say: follitropin, NO INJECTION from Tuesday 9 March to Wednesday 10 March."),
                hold.out());
        assertTrue(
                hold.out().contains("Say: follitropin, one-eight-seven-point-five units, from Thursday 11 March on"),
                hold.out());
        assertTrue(
                hold.out().contains("Say: ganirelix, zero-point-two-five mg, from Wednesday 10 March on, at 8:30 p.m."),
                hold.out());
        Files.writeString(plan, lived);
        String[] trigger = {"--anchor", "R=2027-03-15T08:30", "--call", "T=2027-03-13T19:30", "--yes"};
        TypedRun call = revise("ORD-3", "2027-03-09", trigger);
        assertTrue(
                call.out()
                        .contains(
                                "Say: choriogonadotropin alfa, two-five-zero micrograms, ONCE, on Saturday 13 March at"
                                        + " exactly 7:30 p.m. (19:30)."),
                call.out());
        assertTrue(call.out().contains("Not to be said yet: R is planned and not called."), call.out());
        Files.writeString(plan, lived);
        TypedRun end = revise("ORD-4", "2027-03-09", "--cancel", "2027-03-09", "--yes");
        assertTrue(end.out().contains("Say: STOP. No more injections from Tuesday 9 March on"), end.out());
        assertFalse(end.out().contains("write the new amount"), end.out());
    }

    @Test
    void leavesPastDaysAsTheyWere() throws IOException {
        livesToTheFirstScan();
        String before = Files.readString(plan);
        TypedRun run = revise("ORD-2", "2027-03-09", "--dose", "fsh-pen=200@2027-03-08", "--yes");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("2027-03-08 is before the day of the call, 2027-03-09"), run.err());
        TypedRun word = revise("ORD-2", "2027-03-09", "--cancel", "tomorrow", "--yes");
        assertEquals(2, word.exit());
        assertTrue(word.err().contains("\"tomorrow\" is not a date"), word.err());
        assertEquals(before, Files.readString(plan));
    }

    /** The issue on the door is compared, not the draft between; an unknown one is named so. */
    @Test
    void comparesWithTheIssueOnTheDoorAndSaysWhenThatIsUnknown() throws IOException {
        plan = plans.resolve("SM-04417-issue-3.yaml");
        TypedRun.of("packet", plan.toString(), "--out", out.toString());
        TypedRun known = revise("ORD-4", "2027-03-12", "--hour", "evening=21:00@2027-03-12", "--yes");
        assertFalse(known.err().contains("note: no issue"), known.err());
        TypedRun again = revise("ORD-5", "2027-03-12", "--hour", "evening=21:15@2027-03-12", "--yes");
        assertTrue(again.out().contains("From issue 3 to issue 5"), again.out());
        assertTrue(again.out().contains("before ganirelix: 0.25 mg at 8:30 p.m. (20:30)."), again.out());
        assertTrue(again.out().contains("now    ganirelix: 0.25 mg at 9:15 p.m. (21:15)."), again.out());
        out = folder.resolve("nothing-here");
        TypedRun unknown = revise("ORD-6", "2027-03-12", "--hour", "evening=21:30@2027-03-12", "--yes");
        assertTrue(unknown.err().contains("note: no issue of SM-04417 was printed as final"), unknown.err());
    }

    @Test
    void replacesTheIssueThatIsOnTheDoor() throws IOException {
        plan = plans.resolve("SM-04417-issue-3.yaml");
        assertEquals(
                0,
                TypedRun.of("packet", plan.toString(), "--out", out.toString()).exit());
        assertEquals(
                0,
                revise("ORD-4", "2027-03-12", "--hour", "evening=21:00@2027-03-12", "--yes")
                        .exit());
        TypedRun again = revise("ORD-5", "2027-03-12", "--hour", "evening=21:15@2027-03-12", "--yes");
        assertTrue(again.out().contains("Written: issue 5, replaces issue 3."), again.out());
    }
}

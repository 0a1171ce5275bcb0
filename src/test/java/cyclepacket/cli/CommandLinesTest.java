package cyclepacket.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandLinesTest {
    private static final String PLAN = "plans/patients/SM-04417.yaml";

    @TempDir
    Path folder;

    @Test
    void endsWithTwoForACommandLineThatMeansNothing() {
        assertEquals(2, TypedRun.of().exit());
        assertEquals(2, TypedRun.of("print", PLAN).exit());
        assertEquals(2, TypedRun.of("check").exit());
        assertEquals(2, TypedRun.of("ledger", PLAN, "--json", "--csv").exit());
        TypedRun missing = TypedRun.of("check", "plans/patients/NOBODY.yaml");
        assertEquals(2, missing.exit());
        assertEquals("There is no file plans/patients/NOBODY.yaml\n", missing.err());
    }

    @Test
    void explainsEachCommand() {
        for (String command : List.of(
                "demo",
                "packet",
                "check",
                "ledger",
                "supplies",
                "countersign",
                "record",
                "revise",
                "identify",
                "compare",
                "batch")) {
            TypedRun help = TypedRun.of(command, "--help");
            assertEquals(0, help.exit(), command);
            assertTrue(help.out().contains("Usage: cyclepacket " + command), help.out());
        }
    }

    @Test
    void checksWithoutWriting() throws IOException {
        TypedRun run = TypedRun.of("check", PLAN);
        assertEquals(0, run.exit());
        assertTrue(run.out().contains("[SUPPLY-SHORT]"), run.out());
        assertFalse((run.out() + run.err()).contains("Hollis"), "no finding here is about the name");
    }

    @Test
    void printsTheSuppliesInTwoForms() {
        TypedRun table = TypedRun.of("supplies", PLAN);
        assertEquals(0, table.exit());
        assertTrue(table.out().contains("order by  Thu 11 Mar 2027, 14:00 in America/New_York"), table.out());
        assertTrue(table.out().contains("buy       1 x 900 + 1 x 300, 1245 USD"), table.out());
        assertTrue(table.out().contains("the clinic gives none, so every length counts alike"), table.out());
        TypedRun json = TypedRun.of("supplies", PLAN, "--json");
        assertTrue(json.out().startsWith("{\"plan\":\"SM-04417\",\"medicines\":["), json.out());
        assertEquals(1, json.out().lines().count());
    }

    /** An hour that is over is no advice: neither the table nor a finding says to order by it. */
    @Test
    void saysWhomToCallWhenTheLastHourHasPassed() throws IOException {
        Path plan = TypedRun.copyOfPlans(folder).resolve("SM-04417.yaml");
        Files.writeString(
                plan,
                Files.readString(plan)
                        .replace(", {size: 900, lot: FA-2307, expires: 2028-03-31}]", "]")
                        .replace("(invented), on: 2027-03-03}\n", "(invented), on: 2027-03-05}\n"));
        TypedRun run = TypedRun.of("supplies", plan.toString());
        assertTrue(
                run.out().contains("order by  Thu 4 Mar 2027, 14:00 in America/New_York, which has passed: call"),
                run.out());
        assertFalse(run.err().contains("order by Thursday 4 March"), run.err());
        assertTrue(run.err().contains("call the pharmacy and the prescriber today"), run.err());
    }

    @Test
    void printsTheLedgerInThreeForms() {
        TypedRun table = TypedRun.of("ledger", PLAN);
        assertEquals(0, table.exit());
        assertTrue(table.out().contains("Mon 8 Mar 2027"), table.out());
        assertTrue(table.out().contains("box 1 expect: 30 to 150 owed"), table.out());
        TypedRun json = TypedRun.of("ledger", PLAN, "--json");
        assertTrue(json.out().startsWith("{\"plan\":\"SM-04417\",\"issue\":1,"), json.out());
        assertEquals(1, json.out().lines().count());
        TypedRun csv = TypedRun.of("ledger", PLAN, "--csv");
        assertTrue(
                csv.out().contains("fsh-pen,units,2027-03-08,S4,187.5,planned,,187.5,1,1,certain,empty,,30,150\r\n"),
                csv.out());
    }

    @Test
    void showsTheLedgerWhenAStopDoesNotTouchItsSums() throws IOException {
        Path plans = TypedRun.copyOfPlans(folder);
        Path plan = plans.resolve("SM-04417.yaml");
        Files.writeString(plan, Files.readString(plan).replace(", born: 1990-04-17, number: \"7730418\"", ""));
        assertEquals(
                1,
                TypedRun.of(
                                "packet",
                                plan.toString(),
                                "--out",
                                folder.resolve("out").toString())
                        .exit());
        assertEquals(List.of(), TypedRun.filesBelow(folder.resolve("out")));
        TypedRun ledger = TypedRun.of("ledger", plan.toString());
        assertEquals(0, ledger.exit());
        assertTrue(ledger.err().contains("stop"), ledger.err());
        Files.writeString(plan, Files.readString(plan).replace("amount: 187.5", "amount: 190"));
        TypedRun offDial = TypedRun.of("ledger", plan.toString());
        assertEquals(1, offDial.exit());
        assertEquals("", offDial.out());
    }

    @Test
    void saysThatAnEarlierPacketStillLiesThere() throws IOException {
        Path plans = TypedRun.copyOfPlans(folder);
        Path plan = plans.resolve("SM-04417.yaml");
        Path out = folder.resolve("out");
        assertEquals(
                0,
                TypedRun.of("packet", plan.toString(), "--out", out.toString()).exit());
        List<Path> before = TypedRun.filesBelow(out);
        assertEquals(3, TypedRun.filesBelow(out.resolve("SM-04417/issue-1")).size());
        Files.writeString(plan, Files.readString(plan).replace("amount: 187.5", "amount: 190"));
        TypedRun refused = TypedRun.of("packet", plan.toString(), "--out", out.toString());
        assertEquals(1, refused.exit());
        assertTrue(refused.err().contains("Do not hand out the packet of an earlier run"), refused.err());
        assertEquals(before, TypedRun.filesBelow(out));
    }

    @Test
    void tellsOnTheScreenAloneThatThePlanWasPreparedOnAnotherDay() throws IOException {
        Path out = folder.resolve("out");
        TypedRun run = TypedRun.of("packet", PLAN, "--out", out.toString(), "--json");
        assertTrue(run.err().contains("it was prepared on 2027-03-03, and today is 2027-03-04"), run.err());
        assertFalse(run.out().contains("2027-03-04T"), "no clock time in packet.json");
        assertEquals(Files.readString(out.resolve("SM-04417/issue-1/packet.json")), run.out());
        assertFalse(run.out().contains("Hollis"), "no patient name in packet.json");
    }
}

package cyclepacket.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.quantity.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class PlanEditTest {
    private static final String ITEM = "{date: 2027-03-05, given: 187.5}";

    @Test
    void opensALineBelowEmptyBracketsAndKeepsTheRemark() {
        assertEquals(
                "a: 1\nrecord:   # oldest first\n  - " + ITEM + "\nb: 2\n",
                edited("a: 1\nrecord: []  # oldest first\nb: 2\n", plan -> plan.append("/record", ITEM)));
        assertEquals("record:\n  - " + ITEM + "\n", edited("record:  [ ]\n", plan -> plan.append("/record", ITEM)));
        assertEquals("record:\r\n  - " + ITEM, edited("record: []", "\r\n", plan -> plan.append("/record", ITEM)));
    }

    @Test
    void appendsALineBehindTheLastOneAndItsRemark() {
        String before = "record:\r\n- {date:   2027-03-04}   # odd,  spacing \r\n\r\n# between\r\nb:   2 \r\n";
        String after = edited(before, plan -> plan.append("/record", ITEM));
        assertEquals(before.replace("odd,  spacing \r\n", "odd,  spacing \r\n- " + ITEM + "\r\n"), after);
    }

    @Test
    void appendsToBlockItemsAndAtTheEndOfTheText() {
        String before = "b: 2\nrecord:\n    - date: 2027-03-04\n      given: 1";
        assertEquals(before + "\n    - " + ITEM, edited(before, plan -> plan.append("/record", ITEM)));
    }

    @Test
    void appendsInsideBracketsThatHoldSomething() {
        assertEquals(
                "on-hand: {pen: [{size: 600}, " + ITEM + " ] }  # x\n",
                edited("on-hand: {pen: [{size: 600} ] }  # x\n", plan -> plan.append("/on-hand/pen", ITEM)));
        assertEquals(
                "{\"record\": [" + ITEM + "], \"b\": 2}\n",
                edited("{\"record\": [], \"b\": 2}\n", plan -> plan.append("/record", ITEM)));
    }

    @Test
    void makesAListThatIsNotThere() {
        assertEquals("a: 1\nrecord:\n  - " + ITEM + "\n", edited("a: 1\n", plan -> plan.append("/record", ITEM)));
        assertEquals(
                "on-hand:\n  pen: [{size: 1}]\n  other:\n    - " + ITEM + "\nb: 2\n",
                edited("on-hand:\n  pen: [{size: 1}]\nb: 2\n", plan -> plan.append("/on-hand/other", ITEM)));
    }

    @Test
    void putsAnOlderLineBeforeALaterOne() {
        assertEquals(
                "record:\n  # first\n  - " + ITEM + "\n  - {date: 2027-03-06}\n",
                edited("record:\n  # first\n  - {date: 2027-03-06}\n", plan -> plan.insert("/record", 0, ITEM)));
        assertEquals(
                "record: [" + ITEM + ", {date: 2027-03-06}]\n",
                edited("record: [{date: 2027-03-06}]\n", plan -> plan.insert("/record", 0, ITEM)));
    }

    @Test
    void writesOverAValueOrBehindAKey() {
        assertEquals(
                "issue:   2 # x\nreplaces: 1\nb: {c: 1, d: \"e\"}\n",
                edited(
                        "issue:   1 # x\nb: {c: 1}\n",
                        plan -> plan.put("/issue", "2")
                                .put("/replaces", "1", "issue")
                                .put("/b/d", "\"e\"")));
        assertEquals("b: {d: 1}\n", edited("b: {}\n", plan -> plan.put("/b/d", "1")));
        assertEquals("b:\n  c: 1\n  d: 2\ne: 3\n", edited("b:\n  c: 1\ne: 3\n", plan -> plan.put("/b/d", "2")));
    }

    @Test
    void takesAKeyOutWithItsLineAndEmptiesAList() {
        assertEquals("a: 1\nc: 3\n", edited("a: 1\nb: {x: 1,\n  y: 2} # z\nc: 3\n", plan -> plan.remove("b")));
        assertEquals("{\"a\": 1}", edited("{\"a\": 1, \"b\": 2}", plan -> plan.remove("b")));
        assertEquals("{\"b\": 2}", edited("{\"a\": 1, \"b\": 2}", plan -> plan.remove("a")));
        assertEquals(
                "a: []   # x\nb: 1\n",
                edited("a:   # x\n  - {c: 1}\n  - {c: 2}  # y\nb: 1\n", plan -> plan.clear("/a")));
        assertEquals("a: [] # x\n", edited("a: [{c: 1}] # x\n", plan -> plan.clear("/a")));
    }

    /** Every line of the demo is the same afterwards, wherever the new one went. */
    @Test
    void keepsEveryOtherByteOfTheDemoInAnyLineEnds() throws IOException {
        for (String name : List.of("SM-04417", "SM-04417-issue-2", "SM-04417-issue-3")) {
            String demo = Files.readString(Path.of("plans/patients/" + name + ".yaml"));
            for (String before : List.of(demo, demo.replace("\n", "\r\n"), "\uFEFF" + demo, demo.strip())) {
                String after = edited(before, plan -> plan.append("/on-hand/fsh-pen", "{size: 300}"));
                assertEquals(before, after.replace(", {size: 300}", ""));
                String recorded = edited(before, plan -> plan.append("/record", ITEM));
                String without = recorded.replaceFirst("(\r?\n)  - \\Q" + ITEM + "\\E", "");
                assertEquals(before.replace("record: []", "record: "), without);
            }
        }
    }

    @Test
    void refusesWhatIsNoPlanAndWhatIsNoValue() {
        assertThrows(Refusal.class, () -> PlanEdit.of("- a".getBytes(StandardCharsets.UTF_8)));
        assertThrows(Refusal.class, () -> edited("a: 1\n", plan -> plan.put("/b", "1, c: 2], d")));
        assertThrows(Refusal.class, () -> edited("a: 1\n", plan -> plan.append("/b", "1, 2")));
    }

    @Test
    void quotesWhatYamlCouldMisread() {
        assertEquals("T. Okonjo (invented)", FlowLine.text("T. Okonjo (invented)"));
        assertEquals("\"true\"", FlowLine.text("true"));
        assertEquals("\"a: b\"", FlowLine.text("a: b"));
        assertEquals("\"1.5\"", FlowLine.text("1.5"));
        assertTrue(FlowLine.text("x # y").startsWith("\""));
    }

    private static String edited(String before, UnaryOperator<PlanEdit> edit) {
        return new String(
                edit.apply(PlanEdit.of(before.getBytes(StandardCharsets.UTF_8))).bytes(), StandardCharsets.UTF_8);
    }

    private static String edited(String before, String lineBreak, UnaryOperator<PlanEdit> edit) {
        return edited("x: 1" + lineBreak + before, edit).substring(4 + lineBreak.length());
    }
}

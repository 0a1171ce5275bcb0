package cyclepacket.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cyclepacket.quantity.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class PlanTextTest {
    private static final String ONE =
            "countersigned: {by: \"A. \\\"Second\\\": Nurse #2 \\\\ é\", on: 2027-03-09, code: \"7QK4-9M\"}";
    private static final String TWO = "countersigned: {by: \"B. Third\", on: 2027-03-10, code: \"000012\"}";

    @Test
    void appendsOneLineAndKeepsEveryOtherByte() throws IOException {
        String demo = Files.readString(Path.of("plans/patients/SM-04417.yaml"));
        assertEquals(demo + ONE + "\n", spliced(demo));
    }

    @Test
    void keepsCarriageReturnsAndTheByteOrderMark() {
        assertEquals("\uFEFFplan: x\r\n" + ONE + "\r\n", spliced("\uFEFFplan: x\r\n"));
        assertEquals("plan: x\r\nissue: 1\r\n" + ONE + "\r\n", spliced("plan: x\r\nissue: 1"));
    }

    @Test
    void appendsBeforeTheEndMarkAndAtTheIndentOfTheKeys() {
        assertEquals("---\n  plan: x # y\n  " + ONE + "\n...\n", spliced("---\n  plan: x # y\n...\n"));
    }

    @Test
    void replacesAnEarlierLineInItsPlace() {
        String before = "plan: x\n%s  # keep\nissue:   1\n";
        assertEquals(
                String.format(before, TWO),
                new String(
                        PlanText.withCountersigned(bytes(spliced(String.format(before, ONE))), CountersignedSample.TWO),
                        StandardCharsets.UTF_8));
    }

    @Test
    void replacesABlockOfLinesByOneLine() {
        String block =
                "plan: x\ncountersigned:\n  by: Somebody\n  on: 2027-01-01\n  code: old # gone\n# stays\nissue: 1\n";
        assertEquals("plan: x\n" + ONE + " # gone\n# stays\nissue: 1\n", spliced(block));
        assertEquals(ONE + "\nplan: x\n", spliced("countersigned:\nplan: x\n"));
    }

    @Test
    void writesWhatTheReaderReadsBack() throws IOException {
        byte[] demo = Files.readAllBytes(Path.of("plans/patients/SM-04417.yaml"));
        Sheet sheet = Sheet.read(FileKind.PLAN, "plan", PlanText.withCountersigned(demo, CountersignedSample.ONE));
        assertEquals(
                CountersignedSample.ONE,
                PlanPeople.countersigned(sheet.top().at("countersigned")).get());
    }

    @Test
    void refusesTextThatIsNoPlanInBlockStyle() {
        assertThrows(Refusal.class, () -> spliced("{plan: x}"));
        assertThrows(Refusal.class, () -> spliced("- plan"));
        assertThrows(Refusal.class, () -> spliced("plan: [x"));
        assertThrows(Refusal.class, () -> spliced(""));
    }

    private static String spliced(String plan) {
        return new String(PlanText.withCountersigned(bytes(plan), CountersignedSample.ONE), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}

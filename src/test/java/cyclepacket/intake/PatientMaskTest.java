package cyclepacket.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class PatientMaskTest {
    private static final String PLAN = "patient: {name: Wren Hollis, born: 1990-04-17}\nnote: for Wren Hollis\n";

    @Test
    void starsTheNameInEveryLineAndSentenceThatIsNotAboutIt() {
        Sheet sheet = sheet(PLAN);
        PatientMask name = PatientMask.in(sheet);
        assertEquals(
                "patient: {name: ***********, born: 1990-04-17}",
                name.masked(sheet.place("/patient/born")).sourceLine());
        assertEquals("note: for ***********", name.masked(sheet.place("/note")).sourceLine());
        Finding masked =
                name.masked(Finding.stop("X", sheet.place("/note"), "\"for Wren Hollis\" is not", "ask Wren Hollis"));
        assertEquals("\"for ***********\" is not", masked.text());
        assertEquals("ask ***********", masked.mend());
    }

    @Test
    void starsBirthDateAndNumberUnlessTheFindingIsAboutThem() {
        Sheet sheet = sheet("patient: {name: Wren Hollis, born: 1990-04-17, number: \"7730418\", zone: x}\n");
        PatientMask mask = PatientMask.in(sheet);
        assertEquals(
                "patient: {name: ***********, born: ****-**-**, number: \"*******\", zone: x}",
                mask.masked(sheet.place("/patient/zone")).sourceLine());
        assertEquals(
                "patient: {name: ***********, born: ****-**-**, number: \"7730418\", zone: x}",
                mask.masked(sheet.place("/patient/number")).sourceLine());
        assertEquals(
                "patient: {name: ***********, born: 1990-04-17, number: \"*******\", zone: x}",
                mask.masked(sheet.place("/patient/born")).sourceLine());
    }

    @Test
    void leavesTheSameDigitsAloneElsewhere() {
        Sheet sheet = sheet("patient: {name: Wren Hollis, born: 2027-03-05}\nanchors: {S1: 2027-03-05}\n");
        assertEquals(
                "anchors: {S1: 2027-03-05}",
                PatientMask.in(sheet).masked(sheet.place("/anchors/S1")).sourceLine());
    }

    @Test
    void showsTheNameWhereTheFindingIsAboutIt() {
        Sheet sheet = sheet(PLAN);
        assertEquals(
                "patient: {name: Wren Hollis, born: ****-**-**}",
                PatientMask.in(sheet).masked(sheet.place("/patient/name")).sourceLine());
    }

    @Test
    void starsANameThatIsWrittenWithEscapes() {
        Sheet sheet = sheet("patient: {name: \"Wr\\u0065n Hollis\", born: x}\n");
        assertEquals(
                "patient: {name: \"****************\", born: x}",
                PatientMask.in(sheet).masked(sheet.place("/patient/born")).sourceLine());
    }

    @Test
    void starsANameOverTwoLines() {
        Sheet sheet = sheet("patient:\n  name: Wren\n    Hollis\n  born: x\n");
        PatientMask name = PatientMask.in(sheet);
        assertEquals(
                "    ******",
                name.masked(new Place("plan", "", 3, 5, "    Hollis")).sourceLine());
    }

    @Test
    void starsWhatStandsBehindNameInAPlanThatIsNotYaml() {
        Sheet sheet = sheet("patient: {name: Wren Hollis, born: [1990-04-17}\n");
        List<Finding> findings =
                sheet.findings().stream().map(PatientMask.in(sheet)::masked).toList();
        assertEquals(
                "patient: {name: ***********, born: [****-**-**}",
                findings.get(0).place().sourceLine());
    }

    @Test
    void starsTheNameInAnyShapeOfAPlanThatIsNotYaml() {
        for (String shape : List.of(
                "name: Wren Hollis", "name:\n    Wren Hollis", "\"name\": \"Wren Hollis\"", "name: 'Wren Hollis'")) {
            Sheet sheet = sheet("patient:\n  " + shape + "\n  born: [x\nby: Wren Hollis]]\n");
            PatientMask name = PatientMask.in(sheet);
            for (String line : sheet.source().lines()) {
                String shown = name.masked(new Place("plan", "", 1, 1, line)).sourceLine();
                assertEquals(-1, shown.indexOf("Wren"), shown);
            }
        }
    }

    @Test
    void starsASecondNameToo() {
        Sheet sheet = sheet("patient: {name: Wren Hollis, name: \"Hollis, Wren\"}\n");
        List<Finding> findings =
                sheet.findings().stream().map(PatientMask.in(sheet)::masked).toList();
        assertEquals(
                "patient: {name: ***********, name: \"************\"}",
                findings.get(0).place().sourceLine());
    }

    private static Sheet sheet(String text) {
        return Sheet.read(FileKind.PLAN, "plan", text.getBytes(StandardCharsets.UTF_8));
    }
}

package cyclepacket.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.finding.Checked;
import cyclepacket.finding.Finding;
import cyclepacket.plan.ExtraPart;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanReaderTest {
    private static final Path DEMO = Path.of("plans/patients/SM-04417.yaml");
    private static final Path ACCEPTED = Path.of("src/test/resources/conformance/accept");

    @TempDir
    Path folder;

    @BeforeEach
    void copyTheDemo() throws IOException {
        copy(Path.of("plans"), folder);
    }

    @Test
    void readsEveryDemoPlanWithoutAFinding() throws IOException {
        try (Stream<Path> plans = Files.list(Path.of("plans/patients"))) {
            for (Path plan : plans.toList()) {
                Intake intake = PlanReader.read(plan);
                assertEquals(List.of(), intake.files().findings());
                String id = intake.files().value().orElseThrow().plan().id();
                assertTrue(plan.getFileName().toString().startsWith(id), id);
            }
        }
    }

    @Test
    void namesEveryFileInTheStyleOfTheGivenPath() throws IOException {
        PlanFiles files = PlanReader.read(DEMO).files().value().orElseThrow();
        assertEquals("plans/patients/SM-04417.yaml", files.planFile());
        assertEquals("plans/clinic.yaml", files.clinicFile());
        assertEquals("plans/protocols/antagonist-fixed.yaml", files.protocolFile());
        assertEquals("plans/medicines/fsh-pen.yaml", files.medicineFiles().get("fsh-pen"));
    }

    /** Every row is compared with every other, so a list without an end would hold the check up for seconds. */
    @Test
    void takesTwoHundredRowsOfAProtocolAndNoMore() throws IOException {
        assertEquals(List.of(), withRows(197).findings());
        List<Finding> found = withRows(198).findings();
        assertEquals(1, found.size());
        assertEquals("LIST-LENGTH", found.get(0).code());
        assertEquals("this list has more than 200 entries", found.get(0).text());
        assertEquals("/rows", found.get(0).place().pointer());
    }

    private Checked<PlanFiles> withRows(int more) throws IOException {
        Path protocol = folder.resolve("protocols/antagonist-fixed.yaml");
        String row = "  - {medicine: trigger-syringe, on: T, at: exact, amount: 250}\n";
        Files.writeString(
                protocol,
                Files.readString(Path.of("plans/protocols/antagonist-fixed.yaml"))
                        .replace(row, row + row.repeat(more)));
        return PlanReader.read(folder.resolve("patients/SM-04417.yaml")).files();
    }

    @Test
    void keepsMedicinesInTheOrderOfTheRows() throws IOException {
        PlanFiles files = PlanReader.read(DEMO).files().value().orElseThrow();
        assertEquals(
                List.of("fsh-pen", "antagonist-syringe", "trigger-syringe"),
                List.copyOf(files.medicines().keySet()));
        assertEquals(
                List.of("fsh-pen", "antagonist-syringe", "trigger-syringe"),
                List.copyOf(files.plan().onHand().keySet()));
    }

    @Test
    void listsTheSourcesInTheOrderTheyAreRead() throws IOException {
        List<SourceFile> sources = PlanReader.read(DEMO).sources();
        assertEquals(
                List.of("plan", "clinic", "protocol", "medicine", "medicine", "medicine"),
                sources.stream().map(SourceFile::kind).toList());
        assertEquals(
                Files.readString(DEMO), new String(sources.get(0).bytes(), java.nio.charset.StandardCharsets.UTF_8));
    }

    @Test
    void readsOtherSpellingsAsTheSamePlan() throws IOException {
        Intake demo = PlanReader.read(DEMO);
        try (Stream<Path> cases = Files.list(ACCEPTED)) {
            List<Path> same = cases.filter(c -> c.getFileName().toString().startsWith("same-"))
                    .toList();
            assertTrue(same.size() >= 6);
            for (Path folderOfCase : same) {
                Intake other = readOver(folderOfCase);
                assertEquals(plan(demo), plan(other), folderOfCase.toString());
            }
        }
    }

    @Test
    void leavesOnlyTheCountersignedKeyOutOfTheCanonicalText() throws IOException {
        String before = canonicalOfPlan();
        Path plan = folder.resolve("patients/SM-04417.yaml");
        Files.write(plan, PlanText.withCountersigned(Files.readAllBytes(plan), CountersignedSample.ONE));
        assertEquals(before, canonicalOfPlan());
        Files.writeString(plan, Files.readString(plan).replace("amount: 187.5", "amount: 187.50"));
        assertEquals(before, canonicalOfPlan());
        Files.writeString(plan, Files.readString(plan).replace("amount: 187.50", "amount: 200"));
        assertNotEquals(before, canonicalOfPlan());
    }

    @Test
    void findsAFileThatIsTooLarge() throws IOException {
        Files.writeString(folder.resolve("clinic.yaml"), "#\n".repeat(Sheet.LARGEST_FILE / 2) + "#");
        assertEquals(List.of("YAML-TOO-LARGE"), codes());
        Files.writeString(folder.resolve("clinic.yaml"), "#\n".repeat(Sheet.LARGEST_FILE / 2));
        assertEquals(List.of("YAML-EMPTY"), codes());
    }

    @Test
    void throwsOnlyWhenThePlanItselfCannotBeRead() throws IOException {
        assertThrows(NoSuchFileException.class, () -> PlanReader.read(folder.resolve("patients/none.yaml")));
        Files.delete(folder.resolve("clinic.yaml"));
        Files.createDirectory(folder.resolve("clinic.yaml"));
        assertEquals(List.of("FILE-UNREADABLE"), codes());
    }

    @Test
    void findsTheFoldersOfAPlanInTheWorkingFolder() {
        PlanFolder plan = new PlanFolder(Path.of("SM-04417.yaml"));
        assertEquals("../clinic.yaml", PlanFolder.shown(plan.clinic()));
        assertEquals("clinic.yaml", PlanFolder.shown(new PlanFolder(Path.of("patients/x.yaml")).clinic()));
    }

    @Test
    void letsThePlanChooseItsPartsBeforeItsClinic() throws IOException {
        Path plan = folder.resolve("patients/SM-04417.yaml");
        assertEquals(Set.of(), parts());
        Files.writeString(
                folder.resolve("clinic.yaml"),
                Files.readString(folder.resolve("clinic.yaml")) + "\nwith: [travel, evening-cards]\n");
        assertEquals(List.of(ExtraPart.EVENING_CARDS, ExtraPart.TRAVEL), List.copyOf(parts()));
        String chosen = Files.readString(plan);
        Files.writeString(plan, chosen + "\nwith: [helper]\n");
        assertEquals(Set.of(ExtraPart.HELPER), parts());
        Files.writeString(plan, chosen + "\nwith: []\n");
        assertEquals(Set.of(), parts());
    }

    private Set<ExtraPart> parts() throws IOException {
        return PlanReader.read(folder.resolve("patients/SM-04417.yaml"))
                .files()
                .value()
                .orElseThrow()
                .with();
    }

    private List<String> codes() throws IOException {
        return PlanReader.read(folder.resolve("patients/SM-04417.yaml")).files().findings().stream()
                .map(Finding::code)
                .toList();
    }

    private String canonicalOfPlan() throws IOException {
        return PlanReader.read(folder.resolve("patients/SM-04417.yaml"))
                .sources()
                .get(0)
                .canonical();
    }

    private Intake readOver(Path overlay) throws IOException {
        Path root = folder.resolve("over").resolve(overlay.getFileName().toString());
        copy(Path.of("plans"), root);
        copy(overlay, root);
        return PlanReader.read(root.resolve("patients/SM-04417.yaml"));
    }

    private static Plan plan(Intake intake) {
        return intake.files().value().orElseThrow().plan();
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = to.resolve(from.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.write(copy, Files.readAllBytes(file));
            }
        }
    }
}

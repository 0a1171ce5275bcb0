package cyclepacket.packet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.exchange.RegisterEntry;
import cyclepacket.exchange.RegisterJson;
import cyclepacket.pdf.Typesetter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RegisterTest {
    private static final Path HOME = Path.of("").toAbsolutePath();
    private static final Path THIRD = Path.of("plans/patients/SM-04417-issue-3.yaml");
    private static final Instant AT = Instant.parse("2027-03-12T20:15:00Z");

    @TempDir
    static Path folder;

    private Press press;
    private Path out;

    @BeforeAll
    void printsTheFinalIssue() throws IOException {
        press = new Press(HOME);
        out = folder.resolve("out");
        press.print(THIRD, out, false, AT);
    }

    @AfterAll
    void closes() {
        press.close();
    }

    private static Path copy(String name) throws IOException {
        Path plans = folder.resolve(name);
        try (Stream<Path> all = Files.walk(Path.of("plans"))) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Path target = plans.resolve(Path.of("plans").relativize(file));
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
        return plans.resolve("patients");
    }

    @Test
    void keepsPlanCodeWhoAndWhenAndNoName() throws IOException {
        RegisterEntry entry = Register.of(out, "SM-04417").entries().get(0);
        assertEquals(3, entry.issue());
        assertFalse(entry.isDraft());
        assertEquals("2027-03-12T20:15:00Z", entry.at());
        assertEquals("T. Okonjo (invented)", entry.by());
        assertEquals(Optional.of("R. Lindqvist (invented)"), entry.countersignedBy());
        assertTrue(entry.findings().contains("note CLOCK-CHANGE /patient/zone"), entry.findings()::toString);
        String register = Files.readString(out.resolve("SM-04417/register.json"));
        assertFalse(register.contains("Hollis") || register.contains("7730418"), register);
        assertArrayEquals(
                Files.readAllBytes(THIRD),
                Files.readAllBytes(KeptPlan.find(out, "SM-04417", 3).orElseThrow()));
    }

    @Test
    void logsAReprintAndMakesNoNewIssue() throws IOException {
        Path own = folder.resolve("reprint");
        Outcome first = press.print(THIRD, own, false, AT);
        byte[] packet = Files.readAllBytes(own.resolve("SM-04417/issue-3/packet.pdf"));
        Outcome again = press.print(THIRD, own, false, AT.plusSeconds(60));
        assertEquals(first.written().get().code(), again.written().get().code());
        assertTrue(again.written().get().isReprint());
        assertArrayEquals(packet, Files.readAllBytes(own.resolve("SM-04417/issue-3/packet.pdf")));
        assertEquals(
                List.of("printed", "reprinted"),
                Register.of(own, "SM-04417").entries().stream()
                        .map(RegisterEntry::did)
                        .toList());
    }

    @Test
    void refusesAnotherIssueOfTheSameNumberOnceItIsFinal() throws IOException {
        Path plan = copy("changed").resolve("SM-04417-issue-3.yaml");
        Files.writeString(plan, Files.readString(plan).replace("text-size: standard", "text-size: large"));
        Outcome refused = press.print(plan, out, false, AT);
        assertTrue(refused.written().isEmpty());
        assertTrue(refused.findings().stream().anyMatch(found -> found.code().equals("ISSUE-PRINTED")));
        assertTrue(
                press.print(plan, folder.resolve("other"), false, AT).written().isPresent(), "elsewhere a draft");
    }

    @Test
    void makesTheSameBytesFromItsChartCopyAlone() throws IOException {
        Path own = out.resolve("SM-04417/issue-3");
        Path alone = folder.resolve("alone");
        press.printCarried(own.resolve("chart.pdf"), alone, false, AT);
        for (String file : List.of("packet.pdf", "chart.pdf", "packet.json")) {
            assertArrayEquals(
                    Files.readAllBytes(own.resolve(file)),
                    Files.readAllBytes(alone.resolve("SM-04417/issue-3").resolve(file)),
                    file);
        }
        assertThrows(Unclear.class, () -> press.printCarried(own.resolve("packet.pdf"), alone, false, AT));
    }

    @Test
    void comparesWithTheStoredPlanAndSaysWhenItIsLost() throws IOException {
        Path plans = copy("lost");
        Path plan = plans.resolve("SM-04417-issue-2.yaml");
        Path own = folder.resolve("stored");
        press.print(plans.resolve("SM-04417.yaml"), own, false, AT);
        Files.delete(plans.resolve("SM-04417.yaml"));
        String known = text(press.print(plan, own, false, AT), "packet.pdf");
        assertTrue(known.contains("Each day below is not the same as before."), known);
        assertTrue(known.contains("REPLACES issue 1 of 3 March"), known);
        Outcome lost = press.print(plan, folder.resolve("nothing stored"), false, AT);
        assertTrue(lost.findings().stream().anyMatch(found -> found.code().equals("REPLACED-PLAN-LOST")));
        assertTrue(text(lost, "packet.pdf").contains("We do not have a list of the changes."));
        assertTrue(text(lost, "chart.pdf").contains("The stored plan of issue 1 was not found")
                || text(lost, "chart.pdf").contains("the stored plan of issue 1 was not found"));
        assertFalse(text(lost, "packet.pdf").contains("stored plan"));
    }

    private static String text(Outcome outcome, String file) throws IOException {
        Path path = outcome.written().orElseThrow().folder().resolve(file);
        return Typesetter.textOf(Files.readAllBytes(path))
                .replace('\u00a0', ' ')
                .replace('\n', ' ');
    }

    @Test
    void putsBackWhatAKilledRunMovedAside() throws IOException {
        Path own = folder.resolve("killed");
        press.print(THIRD, own, false, AT);
        Path aside = own.resolve("SM-04417/.replaced-1/issue-3");
        Files.createDirectories(aside.getParent());
        Files.move(own.resolve("SM-04417/issue-3"), aside);
        Files.createDirectories(own.resolve("SM-04417/.making-1"));
        Path kept = own.resolve("SM-04417/inputs/issue-3");
        Path keptAside = own.resolve("SM-04417/inputs/.replaced-1/issue-3");
        Files.createDirectories(keptAside.getParent());
        Files.move(kept, keptAside);
        Files.createDirectories(own.resolve("SM-04417/inputs/.making-1"));
        press.print(THIRD, own, false, AT);
        assertTrue(Files.exists(own.resolve("SM-04417/issue-3/packet.pdf")));
        assertFalse(Files.exists(aside.getParent()) || Files.exists(own.resolve("SM-04417/.making-1")));
        assertTrue(Files.exists(kept.resolve("patients/SM-04417-issue-3.yaml")));
        assertFalse(Files.exists(keptAside.getParent()) || Files.exists(own.resolve("SM-04417/inputs/.making-1")));
    }

    @Test
    void readsBackWhatItWrites() {
        RegisterEntry entry = new RegisterEntry(
                2,
                "C",
                "I",
                true,
                "printed",
                "t",
                "b",
                Optional.empty(),
                Optional.of(1),
                List.of("note X /a"),
                List.of());
        assertEquals(
                Optional.of(List.of(entry, entry)), RegisterJson.read(RegisterJson.of("P", List.of(entry, entry))));
        assertEquals(Optional.empty(), RegisterJson.read("{\"plan\": \"P\", \"iss"));
    }
}

package cyclepacket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.PlanSketch;
import cyclepacket.packet.PrintedDemo;
import cyclepacket.pdf.Conformity;
import cyclepacket.plan.Device;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class ChartPagesTest {
    private static final Map<String, ChartSource> SOURCES = new LinkedHashMap<>();
    private static final Map<String, byte[]> MADE = new LinkedHashMap<>();

    /** Writes each copy to target/chart as well, to be looked at. */
    @BeforeAll
    static void make() throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "chart"));
        for (int issue = 1; issue <= 3; issue++) {
            PlanFiles files = ChartSamples.demo(issue);
            boolean draft = issue < 3;
            SOURCES.put(
                    "issue-" + issue,
                    ChartSamples.source(
                            files,
                            draft,
                            draft ? ChartSamples.findings(files) : List.of(),
                            issue == 2 ? ChartSamples.accepted(files) : List.of()));
        }
        SOURCES.put(
                "not-started",
                ChartSamples.source(
                        ChartOddPlans.all().get("in-use limit, several openings"), true, List.of(), List.of()));
        DemoPlan other = new DemoPlan(1);
        other.paper = Plan.Paper.A4;
        other.window = Device.Window.LEFT;
        other.patientZone = ZoneId.of("America/Los_Angeles");
        SOURCES.put("a4", ChartSamples.source(other.files()));
        for (Map.Entry<String, ChartSource> source : SOURCES.entrySet()) {
            MADE.put(source.getKey(), ChartSamples.pdf(source.getValue()));
            Files.write(folder.resolve(source.getKey() + ".pdf"), MADE.get(source.getKey()));
        }
    }

    /** ISO 14289-1 and ISO 19005-3 level A, by the profiles of veraPDF. */
    @Test
    void keepsBothStandards() {
        MADE.values().forEach(Conformity::assertConforms);
    }

    @Test
    void showsIdentifiersAndIssueOnEveryPage() {
        for (int issue = 1; issue <= 3; issue++) {
            List<List<String>> pages = ChartLines.pages(MADE.get("issue-" + issue));
            for (int page = 0; page < pages.size(); page++) {
                String text = String.join("\n", pages.get(page));
                assertTrue(text.contains("Wren Hollis, born 17 April 1990, number 7730418"), text);
                assertTrue(text.contains("Plan SM-04417, issue " + issue + ", code 7QHX-4TRW"), text);
                assertTrue(text.contains("Page " + (page + 1) + " of " + pages.size()), text);
                assertEquals(issue < 3, text.contains("DRAFT - NOT FOR THE PATIENT"), text);
            }
        }
    }

    @Test
    void saysOnEveryPageThatNothingStartsBeforeTheCall() {
        for (List<String> page : ChartLines.pages(MADE.get("not-started"))) {
            String text = String.join("\n", page);
            assertTrue(text.contains("DRAFT - NOT FOR THE PATIENT. Nothing starts before our call."), text);
        }
    }

    @Test
    void leavesNoPageNearlyEmpty() {
        MADE.forEach((name, pdf) -> {
            List<List<String>> pages = ChartLines.pages(pdf);
            for (int page = 0; page < pages.size(); page++) {
                int number = page + 1;
                assertTrue(ChartLines.body(pages.get(page)).size() >= 12, () -> name + ", page " + number);
            }
        });
    }

    /** Nor with the title of a group, whose last line may be a single word. */
    @Test
    void endsNoPageWithAHeading() throws IOException {
        Map<String, byte[]> all = new LinkedHashMap<>(MADE);
        for (String plan : PrintedDemo.plans()) {
            all.put(plan, PrintedDemo.of(plan).chart());
        }
        Pattern heading = Pattern.compile(
                "\\d\\. [A-Z].*|(Cartridges|Injections|New-cartridge evenings): .*|(Evening|No\\.|Medicine|Anchor|Grade|Warning|Item) .*"
                        + "|sign|away|.*the source of each|House rules|Pen|Pharmacy|Thrown away.*");
        all.forEach((name, pdf) -> ChartLines.pages(pdf).forEach(page -> {
            List<String> body = ChartLines.body(page);
            String last = body.get(body.size() - 1);
            assertTrue(!heading.matcher(last).matches(), () -> name + ": " + last);
        }));
    }

    /**
     * Dose designations that are misread, with the patterns' source: the error-prone lists of the Institute for Safe
     * Medication Practices and the Joint Commission's list of forms not to use.
     */
    @Test
    void usesNoErrorProneForm() {
        List<Pattern> forms = List.of(
                Pattern.compile("(?<![\\w.])\\d[\\d,.]*\\s*[Uu](?![A-Za-z])"),
                Pattern.compile("(?<![A-Za-z])[Ii]\\.?[Uu]\\.?(?![A-Za-z])"),
                Pattern.compile("(?<![\\d.,])\\d[\\d,]*\\.\\d*0(?=\\s*(?:units?|mg|micrograms?|mL)\\b)"),
                Pattern.compile("(?<!\\d)\\.\\d"),
                Pattern.compile("(?<![\\d,.])\\d{4,}(?=\\s*(?:units?|mg|micrograms?|mL)\\b)"),
                Pattern.compile("\\d(?:mg|mcg|mL|ml|g|units?)\\b"),
                Pattern.compile("\\s[@&+]\\s"),
                Pattern.compile("[<>]"),
                Pattern.compile("\\d\\s*(?:units?|mg|mL)\\s*/"));
        List<String> found = new ArrayList<>();
        MADE.forEach((name, pdf) -> {
            String text = ChartLines.text(pdf);
            forms.forEach(form -> form.matcher(text)
                    .results()
                    .forEach(hit -> found.add(name + ": " + text.substring(Math.max(0, hit.start() - 20), hit.end()))));
        });
        assertEquals(List.of(), found);
    }

    @Test
    void actsWithANumberThatIsNowhereElseInThePlan() {
        String text = ChartLines.text(MADE.get("issue-1"));
        assertTrue(text.contains("EXAMPLE: say that the pen stops and the window shows 200 units."), text);
        assertTrue(text.contains("EXAMPLE: 200 units is said two-zero-zero."), text);
        assertEquals(
                2,
                Pattern.compile("(?<![\\d.,-])200(?![\\d.,])")
                        .matcher(text)
                        .results()
                        .count());
    }

    @Test
    void printsFindingsAndAcceptedWarningsWithCodeAndReason() {
        String text = ChartLines.text(MADE.get("issue-2"));
        assertTrue(text.contains("SUPPLY-SHORT in SM-04417-issue-2.yaml:23:3"), text);
        assertTrue(text.contains("DAILY-HIGH"), text);
        assertTrue(text.contains("low response in an earlier"), text);
    }

    @Test
    void holdsAllPartsOfTheCopy() {
        String text = ChartLines.text(MADE.get("issue-3"));
        for (String part : List.of(
                "1. Who and what",
                "2. What went in",
                "3. Trail of the computation",
                "4. Findings and accepted warnings",
                "5. On-call table",
                "6. Teach-back record",
                "7. Signatures",
                "8. Sheet for a dose call",
                "9. Order sheet",
                "The tool does not prescribe.",
                "Record, as it was told",
                "36 hours before R")) {
            assertTrue(text.contains(part), part);
        }
    }

    @Test
    void showsTheTriggerOnBothClocksWhereZonesDiffer() {
        PlanSketch sketch =
                new PlanSketch().size("600", "600", "720").home("600").dose(1, "150");
        sketch.patientZone = ZoneId.of("America/Los_Angeles");
        sketch.retrieval = Optional.of(LocalDateTime.of(2027, 3, 15, 8, 30));
        String text = ChartLines.text(ChartSamples.pdf(ChartSamples.source(sketch.files())));
        assertTrue(text.contains("4:30 p.m. (16:30), Pacific time"), text);
        assertTrue(text.contains("7:30 p.m. (19:30), Eastern time"), text);
    }
}

package cyclepacket.page;

import cyclepacket.course.Course;
import cyclepacket.finding.Checked;
import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.intake.PlanReader;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.pdf.DocumentFacts;
import cyclepacket.pdf.Sheet;
import cyclepacket.pdf.Typesetter;
import cyclepacket.plan.PlanFiles;
import cyclepacket.supply.SupplyPlan;
import cyclepacket.wording.Pack;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** Chart copies of the demo's plans and of plans sketched for a test, down to the finished PDF. */
final class ChartSamples {
    static final Path TEMPLATES = Path.of("templates");
    private static final PageWriter WRITER = new PageWriter(TEMPLATES);
    private static final ChartCopy COPY = new ChartCopy(WRITER);
    private static final Typesetter TYPESETTER = typesetter();

    private ChartSamples() {}

    private static Typesetter typesetter() {
        try {
            return Typesetter.open(TEMPLATES);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One of the three demo issues, as its files say. */
    static PlanFiles demo(int issue) {
        Path plan = Path.of("plans", "patients", issue == 1 ? "SM-04417.yaml" : "SM-04417-issue-" + issue + ".yaml");
        try {
            return PlanReader.read(plan).files().value().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static ChartSource source(
            PlanFiles files, boolean draft, List<Finding> findings, List<ChartSource.Accepted> accepted) {
        Course course = Course.of(files);
        CycleLedger ledger = CycleLedger.of(files, course);
        return new ChartSource(
                files,
                course,
                ledger,
                SupplyPlan.of(files, ledger),
                findings,
                accepted,
                packs(files),
                "7QHX-4TRW",
                draft,
                "0.1.0");
    }

    private static List<Pack> packs(PlanFiles files) {
        return List.of(WordingFolder.of(TEMPLATES, files.plan().language()).pack());
    }

    static ChartSource source(PlanFiles files) {
        return source(files, false, List.of(), List.of());
    }

    /** A few findings of every grade, as the checks would word them. */
    static List<Finding> findings(PlanFiles files) {
        return List.of(
                Finding.warn(
                        "SUPPLY-SHORT",
                        new Place(files.planFile(), "/on-hand/fsh-pen", 23, 3, ""),
                        "follitropin surely lasts until 12 March 2027 only; 937.5 units may be missing",
                        "order by 11 March 2027, 14:00"),
                Finding.warn(
                        "COUNTERSIGN-ABSENT",
                        new Place(files.planFile(), "", 1, 1, ""),
                        "nobody has countersigned this issue",
                        "a second person runs countersign"),
                Finding.note(
                        "CLOCK-CHANGE",
                        new Place(files.planFile(), "/anchors/S1", 15, 10, ""),
                        "the clocks change on 14 March 2027; no printed hour moves",
                        ""));
    }

    static List<ChartSource.Accepted> accepted(PlanFiles files) {
        Finding warn = Finding.warn(
                "DAILY-HIGH",
                new Place(files.planFile(), "/doses/fsh-pen/0", 21, 7, ""),
                "312.5 units a day is above 300 units",
                "ask the prescriber");
        return List.of(new ChartSource.Accepted(
                warn, "low response in an earlier cycle, dose confirmed", "M. Arkwright (invented prescriber)"));
    }

    static String xhtml(ChartSource source) {
        return COPY.xhtml(source);
    }

    static byte[] pdf(ChartSource source) {
        DocumentFacts facts = new DocumentFacts(
                COPY.title(source),
                "Chart copy",
                "en",
                source.files().plan().prepared().on(),
                source.code());
        Checked<byte[]> made = TYPESETTER.typeset(new Sheet(xhtml(source), facts, List.of()));
        return made.value().orElseThrow(() -> new AssertionError(made.findings().toString()));
    }
}

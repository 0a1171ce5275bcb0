package cyclepacket.packet;

import cyclepacket.exchange.CalendarFile;
import cyclepacket.exchange.RegisterJson;
import cyclepacket.finding.Checked;
import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.finding.Refused;
import cyclepacket.intake.PlanReader;
import cyclepacket.intake.SourceFile;
import cyclepacket.page.BatchSheets;
import cyclepacket.page.BesidePages;
import cyclepacket.page.ChartCopy;
import cyclepacket.page.ChartSource;
import cyclepacket.page.PacketFacts;
import cyclepacket.page.PageWriter;
import cyclepacket.page.StandalonePage;
import cyclepacket.page.WordingFolder;
import cyclepacket.pdf.Attachment;
import cyclepacket.pdf.DocumentFacts;
import cyclepacket.pdf.Sheet;
import cyclepacket.pdf.Typesetter;
import cyclepacket.plan.Plan;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Prints packets: reads a plan, refuses it or writes its packet and chart copy, whole. Reusable for many plans. */
public final class Press implements AutoCloseable {
    /** Part of every issue code: another version may print the same plan differently. */
    public static final String VERSION = "0.1.0";

    /** Two documents at a time, and one hand free to get the next thing ready. */
    private static final int HANDS = 3;

    private final Path home;
    private final Path templates;
    private final PageWriter pages;
    private final ExecutorService crew;
    private final Future<Typesetter> typesetter;
    private final Future<List<byte[]>> templateParts;

    /** @param home the project's folder, with {@code templates} and {@code plans} below it */
    public Press(Path home) {
        this.home = home;
        this.templates = home.resolve("templates");
        this.pages = new PageWriter(templates);
        crew = Executors.newFixedThreadPool(HANDS, task -> {
            Thread thread = new Thread(task, "press");
            thread.setDaemon(true);
            return thread;
        });
        // All of this gets ready while the plan is read.
        crew.submit(PlanReader::prepare);
        typesetter = crew.submit(() -> Typesetter.open(templates));
        crew.submit(() -> {
            pages.prepare(ChartCopy.LANGUAGE);
            return null;
        });
        templateParts = crew.submit(() -> Codes.templates(templates));
        crew.submit(() -> {
            RegisterJson.prepare();
            typesetter.get().prepare();
            return null;
        });
    }

    @Override
    public void close() {
        crew.shutdownNow();
    }

    /** The plans of the demo, in their order; patients of the clinic's own that lie beside them are none of it. */
    public List<Path> examplePlans() throws IOException {
        Path folder = home.resolve("plans");
        return Files.readAllLines(folder.resolve("examples.txt"), StandardCharsets.UTF_8).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> folder.resolve("patients").resolve(line.strip() + ".yaml"))
                .toList();
    }

    /**
     * Prints one plan.
     *
     * @param out the folder that gets {@code <plan>/issue-<n>/} and the plan's register
     * @param keepXhtml whether {@code packet.xhtml} is written too
     * @param at when, for the register alone
     * @throws IOException when the plan cannot be read or the packet cannot be written
     */
    public Outcome print(Path plan, Path out, boolean keepXhtml, Instant at) throws IOException {
        Reckoning reckoning = Reckoning.of(plan).in(templates);
        return run(reckoning, Replaced.find(out, plan, reckoning), new Filing(out, keepXhtml, at, false));
    }

    /** Prints a plan that was read. */
    Outcome print(Reckoning reckoning, Path plan, Path out, Instant at) throws IOException {
        return run(reckoning, Replaced.find(out, plan, reckoning), new Filing(out, false, at, false));
    }

    /** Prints a plan of the demo, which may print a changed example over a final one. */
    public Outcome printExample(Path plan, Path out, Instant at) throws IOException {
        Reckoning reckoning = Reckoning.of(plan).in(templates);
        return run(reckoning, Replaced.find(out, plan, reckoning), new Filing(out, false, at, true));
    }

    /**
     * Prints what a chart copy carries: the same bytes again, when templates and program are the same.
     *
     * @throws Unclear when the PDF carries no plan
     */
    public Outcome printCarried(Path chart, Path out, boolean keepXhtml, Instant at) throws IOException {
        try (CarriedPlan carried = CarriedPlan.unpack(chart)) {
            Reckoning reckoning = Reckoning.ofCarried(carried.plan()).in(templates);
            Optional<Reckoning> replaced = carried.replaced().isPresent()
                    ? Replaced.read(carried.replaced().get())
                    : Optional.empty();
            return run(reckoning, replaced, new Filing(out, keepXhtml, at, false));
        }
    }

    private Outcome run(Reckoning reckoning, Optional<Reckoning> replaced, Filing filing) throws IOException {
        try {
            return printed(reckoning, replaced, filing);
        } catch (Refused refused) {
            return filing.refused(reckoning, with(reckoning.findings(), refused.finding()));
        }
    }

    private Outcome printed(Reckoning reckoning, Optional<Reckoning> replaced, Filing filing) throws IOException {
        if (reckoning.isStopped()) {
            return filing.refused(reckoning, reckoning.findings());
        }
        List<SourceFile> before =
                replaced.map(issue -> issue.intake().sources()).orElse(List.of());
        String code = Codes.issue(reckoning.intake().sources(), before, done(templateParts), VERSION);
        Optional<Finding> printed = filing.printedOtherwise(reckoning);
        if (printed.isPresent()) {
            return filing.refused(reckoning, with(reckoning.findings(), printed.get()));
        }
        List<Finding> notes = Replaced.lost(reckoning, replaced);
        Future<Printed> packetRun = crew.submit(() -> packet(reckoning, replaced, code));
        Future<Printed> chartRun = crew.submit(() -> chart(reckoning, before, notes, code));
        Future<Optional<Checked<byte[]>>> cardsRun = crew.submit(() -> cards(reckoning, replaced, code));
        Printed packetPrinted = done(packetRun);
        Checked<byte[]> packet = packetPrinted.pdf();
        Checked<byte[]> chart = done(chartRun).pdf();
        Optional<Checked<byte[]>> cards = done(cardsRun);
        List<Finding> findings = new ArrayList<>(reckoning.findings());
        findings.addAll(notes);
        findings.addAll(inPlan(reckoning, packet.findings()));
        findings.addAll(inPlan(reckoning, chart.findings()));
        cards.ifPresent(made -> findings.addAll(inPlan(reckoning, made.findings())));
        boolean isRefused = cards.filter(made -> made.value().isEmpty()).isPresent();
        if (packet.value().isEmpty() || chart.value().isEmpty() || isRefused) {
            return filing.refused(reckoning, Finding.sorted(findings));
        }
        Optional<byte[]> beside = beside(reckoning, replaced, code);
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("packet.pdf", packet.value().get());
        files.put("chart.pdf", chart.value().get());
        cards.flatMap(Checked::value).ifPresent(made -> files.put("cards.pdf", made));
        if (beside.isPresent()) {
            files.put("beside.pdf", beside.get());
        }
        if (!reckoning.isDraft()) {
            calendar(reckoning, replaced, code).ifPresent(calendar -> files.put("calendar.ics", calendar));
        }
        if (filing.keepXhtml()) {
            files.put("packet.xhtml", StandalonePage.of(packetPrinted.page(), templates));
        }
        return filing.filed(reckoning, Finding.sorted(findings), code, files);
    }

    /** A draft is not for the patient, and its alarms would ring all the same. */
    private static Optional<byte[]> calendar(Reckoning reckoning, Optional<Reckoning> replaced, String code) {
        return CalendarFile.of(calendarIssue(reckoning), replaced.map(Press::calendarIssue), code);
    }

    private static CalendarFile.Issue calendarIssue(Reckoning reckoning) {
        Reckoning.Computed own = reckoning.own();
        return new CalendarFile.Issue(own.files().plan(), own.course(), own.ledger());
    }

    BatchSheets sheets() {
        return new BatchSheets(templates, pages);
    }

    /** One sheet of a print run. */
    byte[] sheet(String page, String title, LocalDate on) throws IOException {
        DocumentFacts facts = new DocumentFacts(title, "a sheet of a print run, made by Cyclepacket", "en", on, title);
        Checked<byte[]> sheet = done(crew.submit(() -> typesetter.get().typeset(new Sheet(page, facts, List.of()))));
        return sheet.value()
                .orElseThrow(() -> new IllegalStateException("a sheet could not be set: " + sheet.findings()));
    }

    private Printed packet(Reckoning reckoning, Optional<Reckoning> replaced, String code)
            throws ExecutionException, InterruptedException {
        Plan own = reckoning.own().files().plan();
        String page = pages.packet(packetFacts(reckoning, replaced, code));
        return new Printed(
                page, typesetter.get().typeset(new Sheet(page, facts(own, "Injection packet", code), List.of())));
    }

    /** The evening cards, which carry the same code and retire with the packet; nothing when nobody asked for them. */
    private Optional<Checked<byte[]>> cards(Reckoning reckoning, Optional<Reckoning> replaced, String code)
            throws ExecutionException, InterruptedException {
        Plan own = reckoning.own().files().plan();
        Typesetter ready = typesetter.get();
        return pages.cards(packetFacts(reckoning, replaced, code))
                .map(page -> ready.typeset(new Sheet(page, facts(own, "Evening cards", code), List.of())));
    }

    /** The patient's texts beside those they were made from, for staff; nothing when the patient reads the source. */
    private Optional<byte[]> beside(Reckoning reckoning, Optional<Reckoning> replaced, String code) throws IOException {
        Plan own = reckoning.own().files().plan();
        if (WordingFolder.of(templates, own.language()).pack().source().isEmpty()) {
            return Optional.empty();
        }
        PacketFacts spoken = packetFacts(reckoning, replaced, code);
        PacketFacts source = packetFacts(reckoning, replaced, code, "");
        String page = new BesidePages(templates, pages).xhtml(spoken, source);
        DocumentFacts facts = new DocumentFacts(
                "Side by side " + own.id() + ", issue " + own.issue(),
                "the patient's texts in two languages, made by Cyclepacket",
                ChartCopy.LANGUAGE,
                own.prepared().on(),
                "Side by side " + code);
        Checked<byte[]> pdf = done(crew.submit(() -> typesetter.get().typeset(new Sheet(page, facts, List.of()))));
        return Optional.of(pdf.value()
                .orElseThrow(() -> new IllegalStateException("the two languages could not be set: " + pdf.findings())));
    }

    private Printed chart(Reckoning reckoning, List<SourceFile> before, List<Finding> notes, String code)
            throws ExecutionException, InterruptedException {
        Plan own = reckoning.own().files().plan();
        String page = new ChartCopy(pages).xhtml(chartSource(reckoning, notes, code));
        List<Attachment> attachments =
                CarriedPlan.attachments(reckoning.intake().sources(), before);
        return new Printed(
                page, typesetter.get().typeset(new Sheet(page, facts(own, "Chart copy", code), attachments)));
    }

    static PacketFacts packetFacts(Reckoning reckoning, Optional<Reckoning> replaced, String code) {
        return packetFacts(
                reckoning, replaced, code, reckoning.own().files().plan().language());
    }

    /** @param language of the clinic's words; one that they were not translated to leaves them as they stand */
    private static PacketFacts packetFacts(
            Reckoning reckoning, Optional<Reckoning> replaced, String code, String language) {
        Reckoning.Computed own = reckoning.own().in(language);
        Optional<PacketFacts> earlier = replaced.map(issue -> packetFacts(issue, language));
        return new PacketFacts(
                own.files(),
                own.course(),
                own.ledger(),
                own.supply(),
                code,
                reckoning.isDraft(),
                replaced.flatMap(Reckoning::preparedOn),
                earlier);
    }

    /** The replaced issue in the words of the new one, so that only what changed differs. */
    private static PacketFacts packetFacts(Reckoning replaced, String language) {
        Reckoning.Computed own = replaced.own().in(language);
        return new PacketFacts(
                own.files(),
                own.course(),
                own.ledger(),
                own.supply(),
                "",
                replaced.isDraft(),
                Optional.empty(),
                Optional.empty());
    }

    private static List<Finding> with(List<Finding> findings, Finding other) {
        List<Finding> all = new ArrayList<>(findings);
        all.add(other);
        return Finding.sorted(all);
    }

    /** A page and what the typesetter made of it. */
    private record Printed(String page, Checked<byte[]> pdf) {}

    private static <T> T done(Future<T> run) throws IOException {
        try {
            return run.get();
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof IOException unreadable) {
                throw unreadable;
            }
            if (failed.getCause() instanceof Refused refused) {
                throw refused;
            }
            throw new IllegalStateException(failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    private ChartSource chartSource(Reckoning reckoning, List<Finding> notes, String code) {
        Reckoning.Computed own = reckoning.own();
        return new ChartSource(
                own.files(),
                own.course(),
                own.ledger(),
                own.supply(),
                standing(reckoning, notes),
                reckoning.verdict().accepted().stream()
                        .map(each -> new ChartSource.Accepted(each.finding(), each.reason(), each.by()))
                        .toList(),
                LanguageCheck.packs(templates, own.files().plan().language()),
                code,
                reckoning.isDraft(),
                VERSION);
    }

    private static List<Finding> standing(Reckoning reckoning, List<Finding> notes) {
        List<Finding> all = new ArrayList<>(reckoning.verdict().standing());
        all.addAll(notes);
        return Finding.sorted(all);
    }

    /** No patient name: a file's properties travel further than its pages. */
    private static DocumentFacts facts(Plan plan, String what, String code) {
        return new DocumentFacts(
                what + " " + plan.id() + ", issue " + plan.issue(),
                what + " of one course of injections, made by Cyclepacket",
                plan.language(),
                plan.prepared().on(),
                what + " " + code);
    }

    /** What only the typesetter can see is still a matter of the plan's own words, or of the templates. */
    private static List<Finding> inPlan(Reckoning reckoning, List<Finding> findings) {
        Place plan = Place.at(reckoning.own().files().planFile(), "");
        return findings.stream()
                .map(found -> found.place().equals(Typesetter.TEMPLATES)
                        ? found
                        : new Finding(found.severity(), found.code(), plan, found.text(), found.mend()))
                .map(found -> found.locatedBy(reckoning.intake().places()))
                .toList();
    }
}

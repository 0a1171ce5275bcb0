package cyclepacket.packet;

import cyclepacket.exchange.PacketJson;
import cyclepacket.exchange.PacketJson.WrittenFile;
import cyclepacket.finding.Checked;
import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.intake.EarlierIssue;
import cyclepacket.intake.SourceFile;
import cyclepacket.page.ChartCopy;
import cyclepacket.page.ChartSource;
import cyclepacket.page.PacketFacts;
import cyclepacket.page.PageWriter;
import cyclepacket.page.StandalonePage;
import cyclepacket.pdf.Attachment;
import cyclepacket.pdf.DocumentFacts;
import cyclepacket.pdf.Sheet;
import cyclepacket.pdf.Typesetter;
import cyclepacket.plan.Plan;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;

/** Prints packets: reads a plan, refuses it or writes its packet and chart copy, whole. Reusable for many plans. */
public final class Press implements AutoCloseable {
    /** Part of every issue code: another version may print the same plan differently. */
    static final String VERSION = "0.1.0";

    /** Two documents at a time, and one hand free to get the next thing ready. */
    private static final int HANDS = 3;

    private final Path home;
    private final Path templates;
    private final PageWriter pages;
    private final ExecutorService crew;
    private final Future<Typesetter> forPatient;
    private final Future<Typesetter> forClinic;
    private final Future<byte[]> templatesDigest;

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
        // All of this gets ready while the plan is read; a typesetter sets one document at a time, so each has its own.
        forPatient = crew.submit(() -> Typesetter.open(templates));
        crew.submit(() -> {
            pages.prepare(ChartCopy.LANGUAGE);
            return null;
        });
        templatesDigest = crew.submit(() -> Codes.templates(templates));
        forClinic = crew.submit(() -> Typesetter.open(templates));
    }

    @Override
    public void close() {
        crew.shutdownNow();
    }

    /** The plans of the demo, in the order of their issues. */
    public List<Path> examplePlans() throws IOException {
        try (Stream<Path> plans = Files.list(home.resolve("plans").resolve("patients"))) {
            return plans.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted((left, right) -> name(left).compareTo(name(right)))
                    .toList();
        }
    }

    private static String name(Path plan) {
        return plan.getFileName().toString().replaceFirst("\\.yaml$", "");
    }

    /**
     * Prints one plan.
     *
     * @param out the folder that gets {@code <plan>/issue-<n>/}
     * @param keepXhtml whether {@code packet.xhtml} is written too
     * @throws IOException when the plan cannot be read or the packet cannot be written
     */
    public Outcome print(Path plan, Path out, boolean keepXhtml) throws IOException {
        Reckoning reckoning = Reckoning.of(plan);
        if (reckoning.isStopped()) {
            return refused(reckoning, reckoning.findings(), out);
        }
        Plan own = reckoning.own().files().plan();
        Optional<LocalDate> replacedOn = own.replaces().isEmpty()
                ? Optional.empty()
                : EarlierIssue.preparedOn(plan, own.id(), own.replaces().get());
        String code = Codes.issue(
                reckoning.intake().sources(),
                done(templatesDigest),
                VERSION + replacedOn.map(day -> " " + day).orElse(""));
        PacketFacts packetFacts = new PacketFacts(
                reckoning.own().files(),
                reckoning.own().course(),
                reckoning.own().ledger(),
                reckoning.own().supply(),
                code,
                reckoning.isDraft(),
                replacedOn);
        ChartSource chartSource = chartSource(reckoning, code);
        Future<Printed> packetRun = crew.submit(() -> {
            String page = pages.packet(packetFacts);
            return new Printed(
                    page, forPatient.get().typeset(new Sheet(page, facts(own, "Injection packet", code), List.of())));
        });
        Future<Printed> chartRun = crew.submit(() -> {
            String page = new ChartCopy(pages).xhtml(chartSource);
            return new Printed(
                    page,
                    forClinic.get().typeset(new Sheet(page, facts(own, "Chart copy", code), attachments(reckoning))));
        });
        Printed packetPrinted = done(packetRun);
        Checked<byte[]> packet = packetPrinted.pdf();
        Checked<byte[]> chart = done(chartRun).pdf();
        List<Finding> findings = new ArrayList<>(reckoning.findings());
        findings.addAll(inPlan(reckoning, packet.findings()));
        findings.addAll(inPlan(reckoning, chart.findings()));
        if (packet.value().isEmpty() || chart.value().isEmpty()) {
            return refused(reckoning, Finding.sorted(findings), out);
        }
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("packet.pdf", packet.value().get());
        files.put("chart.pdf", chart.value().get());
        if (keepXhtml) {
            files.put("packet.xhtml", StandalonePage.of(packetPrinted.page(), templates));
        }
        return written(reckoning, Finding.sorted(findings), code, files, out);
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
            throw new IllegalStateException(failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    private static ChartSource chartSource(Reckoning reckoning, String code) {
        Reckoning.Computed own = reckoning.own();
        return new ChartSource(
                own.files(),
                own.course(),
                own.ledger(),
                own.supply(),
                reckoning.verdict().standing(),
                reckoning.verdict().accepted().stream()
                        .map(each -> new ChartSource.Accepted(each.finding(), each.reason(), each.by()))
                        .toList(),
                code,
                reckoning.isDraft(),
                VERSION);
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

    private static List<Attachment> attachments(Reckoning reckoning) {
        List<Attachment> attachments = new ArrayList<>();
        for (SourceFile source : reckoning.intake().sources()) {
            String name = Path.of(source.shownPath()).getFileName().toString();
            boolean isTaken =
                    attachments.stream().anyMatch(other -> other.name().equals(name));
            attachments.add(new Attachment(
                    isTaken ? source.kind() + "-" + name : name,
                    "application/yaml",
                    "The " + source.kind() + " file this issue was computed from",
                    source.bytes()));
        }
        return attachments;
    }

    /** What only the typesetter can see is still a matter of the plan's own words. */
    private static List<Finding> inPlan(Reckoning reckoning, List<Finding> findings) {
        Place plan = Place.at(reckoning.own().files().planFile(), "");
        return findings.stream()
                .map(found -> new Finding(found.severity(), found.code(), plan, found.text(), found.mend()))
                .map(found -> found.locatedBy(reckoning.intake().places()))
                .toList();
    }

    private static Outcome refused(Reckoning reckoning, List<Finding> findings, Path out) {
        Optional<Path> earlier = reckoning
                .planAndIssue()
                .map(own -> new OutFolder(out, own.id(), own.issue()))
                .filter(OutFolder::holdsEarlierPacket)
                .map(OutFolder::path);
        return new Outcome(findings, reckoning.preparedOn(), Optional.empty(), earlier, PacketJson.of(findings));
    }

    private static Outcome written(
            Reckoning reckoning, List<Finding> findings, String code, Map<String, byte[]> files, Path out)
            throws IOException {
        Plan plan = reckoning.own().files().plan();
        List<WrittenFile> list = files.entrySet().stream()
                .map(file -> new WrittenFile(file.getKey(), sha256(file.getValue())))
                .toList();
        String json = PacketJson.of(plan.id(), plan.issue(), code, reckoning.isDraft(), byFileName(findings), list);
        Map<String, byte[]> all = new LinkedHashMap<>(files);
        all.put("packet.json", json.getBytes(StandardCharsets.UTF_8));
        OutFolder folder = new OutFolder(out, plan.id(), plan.issue());
        folder.write(all);
        return new Outcome(
                findings,
                reckoning.preparedOn(),
                Optional.of(new Outcome.Written(folder.path(), reckoning.isDraft(), reckoning.draftReasons(), code)),
                Optional.empty(),
                json);
    }

    /** How the path was typed, and from which folder, must not show in the packet. */
    private static List<Finding> byFileName(List<Finding> findings) {
        return findings.stream()
                .map(found -> {
                    Place place = found.place();
                    String name = Path.of(place.file()).getFileName().toString();
                    return new Finding(
                            found.severity(),
                            found.code(),
                            new Place(name, place.pointer(), place.line(), place.column(), place.sourceLine()),
                            found.text(),
                            found.mend());
                })
                .toList();
    }

    private static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(CheckedCode.sha256().digest(bytes));
    }
}

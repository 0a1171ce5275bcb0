package cyclepacket.intake;

import cyclepacket.finding.Checked;
import cyclepacket.finding.Finding;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a plan and its companions: valid records, or every finding in all of the files. */
public final class PlanReader {
    private final OpenFiles open;
    private final Sheet plan;

    private PlanReader(OpenFiles open) {
        this.open = open;
        this.plan = open.plan();
    }

    /** Gets the schemas ready that no plan is read without; meant for another thread, while the plan's own is read. */
    public static void prepare() {
        List.of(FileKind.CLINIC, FileKind.PROTOCOL, FileKind.MEDICINE).forEach(SchemaBook::of);
    }

    /**
     * Reads the plan, {@code ../clinic.yaml}, the plan's protocol and every medicine that the two of them name.
     *
     * @throws IOException only when the plan file itself cannot be read; a companion that cannot is a finding
     */
    public static Intake read(Path planFile) throws IOException {
        return new PlanReader(new OpenFiles(new PlanFolder(planFile))).intake();
    }

    /** Reads a plan as if its file held these bytes; its companions are read as they are. */
    public static Intake read(Path planFile, byte[] planBytes) throws IOException {
        return new PlanReader(new OpenFiles(new PlanFolder(planFile), planBytes)).intake();
    }

    /** The same for a folder that holds this plan's own files alone; the clinic file may name medicines beyond them. */
    public static Intake readCarried(Path planFile) throws IOException {
        return new PlanReader(new OpenFiles(new PlanFolder(planFile)).withOwnMedicinesAlone()).intake();
    }

    private Intake intake() throws IOException {
        Optional<Sheet> clinic = open.clinic();
        Optional<Sheet> protocol = open.protocol();
        Shelf shelf = open.shelf(protocol);
        Optional<PlanFiles> files = records(clinic, protocol, shelf);
        PatientMask name = PatientMask.in(plan);
        List<Finding> findings = new ArrayList<>();
        for (Sheet sheet : open.sheets()) {
            sheet.settle();
            findings.addAll(sheet.findings());
        }
        List<Finding> shown = Finding.sorted(findings.stream().map(name::masked).toList());
        boolean isStopped = shown.stream().anyMatch(Finding::isStop);
        if (!isStopped && files.isEmpty()) {
            throw new IllegalStateException("a plan was not understood, and nothing says why");
        }
        return new Intake(
                new Checked<>(isStopped ? Optional.empty() : files, shown),
                new Places(open.sheets(), name),
                open.sources());
    }

    private Optional<PlanFiles> records(Optional<Sheet> clinic, Optional<Sheet> protocol, Shelf shelf) {
        Anchors anchors = protocol.map(sheet -> Anchors.of(sheet, clinic)).orElse(Anchors.unknown());
        Part<cyclepacket.plan.Clinic> clinicRecord =
                clinic.isPresent() ? new ClinicBuilder(clinic.get()).clinic() : Part.absent();
        Part<cyclepacket.plan.Protocol> protocolRecord =
                protocol.isPresent() ? new ProtocolBuilder(protocol.get(), anchors, shelf).protocol() : Part.absent();
        Part<Plan> planRecord = new PlanBuilder(plan, anchors, shelf).plan();
        protocol.ifPresent(sheet -> new CrossCheck(plan, sheet).run());
        Map<String, String> medicineFiles = new LinkedHashMap<>();
        shelf.sheets().forEach((id, sheet) -> medicineFiles.put(id, sheet.shownPath()));
        return Part.whole(
                        plan.top(),
                        () -> new PlanFiles(
                                planRecord.get(),
                                clinicRecord.get(),
                                protocolRecord.get(),
                                shelf.medicines(),
                                plan.shownPath(),
                                clinic.orElseThrow().shownPath(),
                                protocol.orElseThrow().shownPath(),
                                medicineFiles))
                .value();
    }
}

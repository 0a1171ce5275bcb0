package cyclepacket.intake;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.plan.Syringe;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** The files that lie open during one reading: opens each, and reports those that are missing or named wrongly. */
final class OpenFiles {
    private static final String ID = "[a-z0-9][a-z0-9-]*";

    private final PlanFolder folder;
    private boolean holdsAllMedicines = true;
    private final Sheet plan;
    private final List<Sheet> sheets = new ArrayList<>();
    private final List<SourceFile> sources = new ArrayList<>();

    OpenFiles(PlanFolder folder) throws IOException {
        this(folder, PlanFolder.bytes(folder.plan()));
    }

    /** @param planBytes what the plan's file would hold */
    OpenFiles(PlanFolder folder, byte[] planBytes) {
        this.folder = folder;
        this.plan = open(FileKind.PLAN, folder.plan(), planBytes);
    }

    /** For a folder in which a medicine without a file may exist all the same. */
    OpenFiles withOwnMedicinesAlone() {
        holdsAllMedicines = false;
        return this;
    }

    Sheet plan() {
        return plan;
    }

    List<Sheet> sheets() {
        return List.copyOf(sheets);
    }

    List<SourceFile> sources() {
        return List.copyOf(sources);
    }

    Optional<Sheet> clinic() {
        Optional<Sheet> clinic = openIfThere(FileKind.CLINIC, folder.clinic());
        if (clinic.isEmpty() && !Files.exists(folder.clinic())) {
            plan.findings()
                    .add(Finding.stop(
                            "FILE-MISSING",
                            Place.at(PlanFolder.shown(folder.clinic()), ""),
                            "the clinic file is missing",
                            "put clinic.yaml into the folder above the plan's own"));
        }
        return clinic;
    }

    Optional<Sheet> protocol() throws IOException {
        Field named = plan.top().at("protocol");
        if (plan.root().isEmpty()) {
            return likelyProtocol();
        }
        Optional<String> id = named.text().value();
        if (id.isEmpty()) {
            return Optional.empty();
        }
        if (!id.get().matches(ID) || !Files.exists(folder.protocol(id.get()))) {
            TreeSet<String> known = PlanFolder.names(folder.protocols());
            named.stop(
                    "PROTOCOL-UNKNOWN",
                    "there is no protocol " + Characters.quoted(id.get()) + " in "
                            + PlanFolder.shown(folder.protocols()),
                    NearestName.mendFromFolder(id.get(), known, PlanFolder.shown(folder.protocols())));
            return Optional.empty();
        }
        Optional<Sheet> protocol = openIfThere(FileKind.PROTOCOL, folder.protocol(id.get()));
        protocol.ifPresent(sheet -> nameAgrees(sheet.top().at("protocol"), id.get()));
        return protocol;
    }

    /** A plan that is not YAML still shows which protocol it means, so that the findings of that file are not kept back. */
    private Optional<Sheet> likelyProtocol() {
        Optional<String> id = plan.source().lines().stream()
                .filter(line -> line.matches("protocol: *" + ID + " *"))
                .map(line -> line.substring(line.indexOf(':') + 1).strip())
                .findFirst();
        return id.flatMap(name -> openIfThere(FileKind.PROTOCOL, folder.protocol(name)));
    }

    /** Opens every medicine that the protocol or the plan names, in that order. */
    Shelf shelf(Optional<Sheet> protocol) throws IOException {
        TreeSet<String> known = PlanFolder.names(folder.medicines());
        Shelf shelf = new Shelf();
        Rack rack = new Rack();
        for (Map.Entry<String, Mention> first : Mention.firsts(plan, protocol).entrySet()) {
            String id = first.getKey();
            if (!id.matches(ID) || !known.contains(id)) {
                first.getValue()
                        .stop(
                                "MEDICINE-UNKNOWN",
                                "there is no medicine " + Characters.quoted(id) + " in "
                                        + PlanFolder.shown(folder.medicines()),
                                NearestName.mendFromFolder(id, known, PlanFolder.shown(folder.medicines())));
                continue;
            }
            openIfThere(FileKind.MEDICINE, folder.medicine(id)).ifPresent(sheet -> {
                nameAgrees(sheet.top().at("medicine"), id);
                shelf.put(id, sheet, rack.syringe(sheet.top().at("draw").at("syringe")));
            });
        }
        if (holdsAllMedicines) {
            houseRulesNameMedicines(known);
        }
        return shelf;
    }

    /** The syringe files that medicines name; each is opened once. */
    private final class Rack {
        private final TreeSet<String> known;
        private final Map<String, Part<Syringe>> read = new LinkedHashMap<>();

        private Rack() throws IOException {
            known = PlanFolder.names(folder.syringes());
        }

        private Part<Syringe> syringe(Field named) {
            Optional<String> id = named.text().value();
            if (id.isEmpty()) {
                return Part.absent();
            }
            if (!id.get().matches(ID) || !known.contains(id.get())) {
                named.stop(
                        "SYRINGE-UNKNOWN",
                        "there is no syringe " + Characters.quoted(id.get()) + " in "
                                + PlanFolder.shown(folder.syringes()),
                        NearestName.mendFromFolder(id.get(), known, PlanFolder.shown(folder.syringes())));
                return Part.absent();
            }
            return read.computeIfAbsent(id.get(), this::open);
        }

        private Part<Syringe> open(String id) {
            Optional<Sheet> sheet = openIfThere(FileKind.SYRINGE, folder.syringe(id));
            if (sheet.isEmpty() || sheet.get().root().isEmpty()) {
                return Part.absent();
            }
            nameAgrees(sheet.get().top().at("syringe"), id);
            return new SyringeBuilder(sheet.get()).syringe();
        }
    }

    /** A rule under a misspelt name would be a rule that nobody sees. */
    private void houseRulesNameMedicines(TreeSet<String> known) {
        for (Sheet sheet : sheets()) {
            if (sheet.kind() == FileKind.CLINIC) {
                Map<String, Field> named = new LinkedHashMap<>();
                for (String rule : List.of("trigger-evening", "missed", "vials-per-diluent")) {
                    sheet.top().at("house-rules").at(rule).entries().forEach((id, field) -> {
                        if (!known.contains(id)) {
                            named.put(id, field);
                        }
                    });
                }
                named.forEach((id, field) -> field.stopAtKey(
                        "MEDICINE-UNKNOWN",
                        "there is no medicine " + Characters.quoted(id) + " in " + PlanFolder.shown(folder.medicines()),
                        NearestName.mendFromFolder(id, known, PlanFolder.shown(folder.medicines()))));
            }
        }
    }

    private void nameAgrees(Field idField, String id) {
        Optional<String> written = idField.text().value();
        if (written.isPresent() && !written.get().equals(id)) {
            idField.stop(
                    "FILE-NAME",
                    "the file is called " + id + ".yaml, but it says " + Characters.quoted(written.get()),
                    "give both the same name");
        }
    }

    private Optional<Sheet> openIfThere(FileKind kind, Path file) {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            return Optional.of(open(kind, file));
        } catch (IOException unreadable) {
            plan.findings()
                    .add(Finding.stop(
                            "FILE-UNREADABLE",
                            Place.at(PlanFolder.shown(file), ""),
                            "this file cannot be opened",
                            "ask whoever keeps the files for the right to read it"));
            return Optional.empty();
        }
    }

    private Sheet open(FileKind kind, Path file) throws IOException {
        return open(kind, file, PlanFolder.bytes(file));
    }

    private Sheet open(FileKind kind, Path file, byte[] bytes) {
        Sheet sheet = Sheet.read(kind, PlanFolder.shown(file), bytes);
        sheets.add(sheet);
        boolean isPlan = kind == FileKind.PLAN;
        String canonical = sheet.root()
                .map(tree -> CanonicalJson.of(tree, key -> isPlan && key.equals("countersigned")))
                .orElse("");
        sources.add(new SourceFile(sheet.shownPath(), kind.word(), bytes, canonical));
        return sheet;
    }
}

package cyclepacket.packet;

import cyclepacket.exchange.PacketJson;
import cyclepacket.exchange.PacketJson.WrittenFile;
import cyclepacket.exchange.RegisterEntry;
import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.plan.Plan;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Puts one printed issue into its folder and its register.
 *
 * @param keepXhtml whether the page between template and PDF is kept
 * @param at when, for the register alone: nothing that is printed knows the clock
 * @param isExample whether a changed example may be printed over a final one
 */
record Filing(Path out, boolean keepXhtml, Instant at, boolean isExample) {
    private static final String PRINTED = "ISSUE-PRINTED";

    /** A final issue is on somebody's door: another one of the same number would be a second table beside it. */
    Optional<Finding> printedOtherwise(Reckoning reckoning) throws IOException {
        Plan plan = reckoning.own().files().plan();
        String inputs = Codes.inputs(reckoning.intake().sources());
        return Register.of(out, plan.id())
                .lastFinal(plan.issue())
                .filter(entry -> !isExample && !entry.inputs().equals(inputs))
                .map(entry -> Finding.stop(
                                PRINTED,
                                Place.at(reckoning.own().files().planFile(), "/issue"),
                                "issue " + plan.issue() + " was printed as final with code " + entry.code()
                                        + ", and the plan or a file it uses was changed since",
                                "start the next issue with ./cyclepacket revise")
                        .locatedBy(reckoning.intake().places()));
    }

    Outcome refused(Reckoning reckoning, List<Finding> findings) {
        Optional<Path> earlier = reckoning
                .planAndIssue()
                .map(own -> new OutFolder(out, own.id(), own.issue()))
                .filter(OutFolder::holdsEarlierPacket)
                .map(OutFolder::path);
        return new Outcome(findings, reckoning.preparedOn(), Optional.empty(), earlier, PacketJson.of(findings));
    }

    Outcome filed(Reckoning reckoning, List<Finding> findings, String code, Map<String, byte[]> files)
            throws IOException {
        Plan plan = reckoning.own().files().plan();
        List<WrittenFile> list = files.entrySet().stream()
                .map(file -> new WrittenFile(file.getKey(), sha256(file.getValue())))
                .toList();
        String json = PacketJson.of(plan.id(), plan.issue(), code, reckoning.isDraft(), byFileName(findings), list);
        Map<String, byte[]> all = new LinkedHashMap<>(files);
        all.put("packet.json", json.getBytes(StandardCharsets.UTF_8));
        OutFolder folder = new OutFolder(out, plan.id(), plan.issue());
        Path parent = folder.path().getParent();
        Durable.createFolders(parent);
        return FolderLock.holding(parent, () -> {
            OutFolder.tidy(parent);
            Optional<Finding> overtaken = printedOtherwise(reckoning);
            if (overtaken.isPresent()) {
                return refused(reckoning, List.of(overtaken.get()));
            }
            boolean isReprint = file(reckoning, findings, code, all, folder);
            return written(reckoning, findings, code, folder, isReprint, json);
        });
    }

    private static Outcome written(
            Reckoning reckoning,
            List<Finding> findings,
            String code,
            OutFolder folder,
            boolean isReprint,
            String json) {
        return new Outcome(
                findings,
                reckoning.preparedOn(),
                Optional.of(new Outcome.Written(
                        folder.path(), reckoning.isDraft(), isReprint, reckoning.draftReasons(), code)),
                Optional.empty(),
                json);
    }

    private boolean file(
            Reckoning reckoning, List<Finding> findings, String code, Map<String, byte[]> all, OutFolder folder)
            throws IOException {
        Plan plan = reckoning.own().files().plan();
        Register register = Register.of(out, plan.id());
        boolean isReprint = register.holds(code);
        KeptPlan.keep(out, plan.id(), plan.issue(), reckoning.intake().sources());
        boolean isNew = !folder.holds(all);
        if (isNew) {
            folder.write(all);
        }
        try {
            register.add(entry(reckoning, findings, code, isReprint));
        } catch (IOException full) {
            // A packet that no register knows would count as never printed.
            if (isNew) {
                Durable.delete(folder.path());
            }
            throw full;
        }
        return isReprint;
    }

    private RegisterEntry entry(Reckoning reckoning, List<Finding> findings, String code, boolean isReprint) {
        Plan plan = reckoning.own().files().plan();
        return new RegisterEntry(
                plan.issue(),
                code,
                Codes.inputs(reckoning.intake().sources()),
                reckoning.isDraft(),
                isReprint ? "reprinted" : "printed",
                at.truncatedTo(ChronoUnit.SECONDS).toString(),
                plan.prepared().by(),
                plan.countersigned().filter(sign -> reckoning.isCountersigned()).map(Plan.Countersigned::by),
                plan.replaces(),
                findings.stream()
                        .map(found -> found.severity().word() + " " + found.code() + " "
                                + found.place().pointer())
                        .toList(),
                reckoning.verdict().accepted().stream()
                        .map(each -> each.finding().code() + " "
                                + each.finding().place().pointer() + ": " + each.reason() + " (" + each.by() + ")")
                        .toList());
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

package cyclepacket.packet;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.finding.Severity;
import cyclepacket.page.ClinicWords;
import cyclepacket.page.WordingFolder;
import cyclepacket.plan.PlanFiles;
import cyclepacket.wording.Pack;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether a plan can be printed in its language: is there a folder, is it approved, is every text its own, and has a
 * person read it.
 *
 * @param draftReasons each as the rest of the sentence "draft because"
 */
record LanguageCheck(List<Finding> findings, List<String> draftReasons) {
    LanguageCheck {
        findings = List.copyOf(findings);
        draftReasons = List.copyOf(draftReasons);
    }

    static LanguageCheck of(Path templates, PlanFiles files) {
        String language = files.plan().language();
        Place place = Place.at(files.planFile(), "/language");
        if (!Files.exists(templates.resolve("wording").resolve(language).resolve(Pack.FILE))) {
            return new LanguageCheck(
                    List.of(Finding.stop(
                            "LANGUAGE-UNKNOWN",
                            place,
                            "there is no wording in " + language,
                            "write one of: " + String.join(", ", languages(templates)))),
                    List.of());
        }
        WordingFolder folder = WordingFolder.of(templates, language);
        List<Finding> findings = new ArrayList<>();
        List<String> reasons = new ArrayList<>();
        for (WordingFolder words : used(folder)) {
            WordingApproval approval = new WordingApproval(words, place)
                    .check(files.plan().prepared().on());
            findings.addAll(approval.findings());
            reasons.addAll(approval.draftReasons());
        }
        if (folder.pack().source().isPresent()) {
            translated(folder, files, findings, reasons);
        }
        return new LanguageCheck(findings, reasons);
    }

    /** The source's texts stand in for missing ones, and staff read it on the chart copy. */
    private static List<WordingFolder> used(WordingFolder folder) {
        return folder.pack().source().isEmpty() ? List.of(folder) : List.of(folder.source(), folder);
    }

    /** The packs whose texts an issue prints, the source first. */
    static List<Pack> packs(Path templates, String language) {
        return used(WordingFolder.of(templates, language)).stream()
                .map(WordingFolder::pack)
                .toList();
    }

    private static void translated(
            WordingFolder folder, PlanFiles files, List<Finding> findings, List<String> reasons) {
        String name = folder.pack().name();
        if (folder.pack().reviewer().isEmpty()) {
            reasons.add("no person has reviewed the wording in " + name);
            findings.add(Finding.note(
                    "WORDING-NOT-REVIEWED",
                    Place.at(files.planFile(), "/language"),
                    "no person has reviewed the wording in " + name + " (translator: "
                            + folder.pack().translator() + ")",
                    "let a qualified translator read every text, and write the name as reviewer in " + Pack.FILE));
        }
        List<Finding> texts = folder.findings();
        if (!texts.isEmpty()) {
            reasons.add("texts in " + name + " are missing, older than their source, or filled in otherwise");
            texts.stream().map(LanguageCheck::note).forEach(findings::add);
        }
        List<Finding> slots = ClinicWords.missing(files, folder.pack().language());
        if (!slots.isEmpty()) {
            reasons.add("texts of the clinic's files are not in " + name);
            findings.addAll(slots);
        }
    }

    /** A text that falls back is no warning that a line under overrides could lift: it keeps the packet a draft. */
    private static Finding note(Finding found) {
        return found.isStop()
                ? found
                : new Finding(Severity.NOTE, found.code(), found.place(), found.text(), found.mend());
    }

    private static List<String> languages(Path templates) {
        try {
            return WordingFolder.languages(templates);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}

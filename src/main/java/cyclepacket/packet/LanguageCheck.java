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
 * Whether a plan can be printed in its language: is there a folder, is it still approved, is every text its own, and has
 * a person read it.
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
        if (files.plan().prepared().on().isAfter(folder.pack().lastDay())) {
            findings.add(Finding.stop(
                    "WORDING-ENDED",
                    place,
                    "the wording in " + folder.pack().name() + " may be printed until "
                            + folder.pack().lastDay() + " only",
                    "let the clinic read and approve it again, and write the new day in its " + Pack.FILE));
        }
        return folder.pack().source().isEmpty()
                ? new LanguageCheck(findings, List.of())
                : translated(folder, files, findings);
    }

    private static LanguageCheck translated(WordingFolder folder, PlanFiles files, List<Finding> findings) {
        String name = folder.pack().name();
        List<String> reasons = new ArrayList<>();
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
        return new LanguageCheck(findings, reasons);
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

package cyclepacket.packet;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.page.WordingFolder;
import cyclepacket.wording.Approval;
import cyclepacket.wording.Pack;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Whether somebody let a language's words be printed, and whether its locked texts are still those that were approved. */
final class WordingApproval {
    private final WordingFolder folder;
    private final Pack pack;
    private final Place place;
    private final List<Finding> findings = new ArrayList<>();
    private final List<String> draftReasons = new ArrayList<>();

    /** @param place where the plan names its language */
    WordingApproval(WordingFolder folder, Place place) {
        this.folder = folder;
        this.pack = folder.pack();
        this.place = place;
    }

    /** The code over every locked text of the language, by its key. */
    static String code(WordingFolder folder) {
        List<byte[]> parts = new ArrayList<>();
        folder.texts(folder.source().pack().locked()).forEach((key, text) -> {
            parts.add(key.getBytes(StandardCharsets.UTF_8));
            parts.add(text.value().getBytes(StandardCharsets.UTF_8));
        });
        return CheckedCode.over(parts);
    }

    /** @param prepared the day the issue was prepared, which is "today" of the computation */
    WordingApproval check(LocalDate prepared) {
        if (prepared.isAfter(pack.lastDay())) {
            findings.add(Finding.stop(
                    "WORDING-ENDED",
                    place,
                    "the wording in " + pack.name() + " may be printed until " + pack.lastDay() + " only",
                    "let the clinic read and approve it again, and write the new day in its " + Pack.FILE));
        }
        if (pack.approved().filter(approval -> approval.on().isAfter(prepared)).isPresent()) {
            unapproved("the wording in " + pack.name() + " is approved only from "
                    + pack.approved().get().on() + " on");
            return this;
        }
        return checkTexts();
    }

    /** What holds on every day. */
    WordingApproval checkTexts() {
        pack.approved()
                .ifPresentOrElse(
                        this::checkLocked, () -> unapproved("nobody has approved the wording in " + pack.name()));
        return this;
    }

    private void unapproved(String reason) {
        keepDraft(
                "WORDING-NOT-APPROVED",
                reason,
                "let whoever approves the clinic's papers read it, and write approved-by, approved-on and locked-code = "
                        + code(folder) + " in its " + Pack.FILE);
    }

    private void checkLocked(Approval approval) {
        List<String> locked = folder.source().pack().locked();
        String code = code(folder);
        if (!locked.isEmpty() && !code.equals(pack.lockedCode().orElse(""))) {
            keepDraft(
                    "WORDING-LOCKED-CHANGED",
                    "the locked texts in " + pack.name() + " are not those that " + approval.by() + " approved on "
                            + approval.on(),
                    "let them be read and approved again (" + String.join(", ", locked) + "), and write locked-code = "
                            + code + " in its " + Pack.FILE);
        }
    }

    private void keepDraft(String code, String reason, String mend) {
        draftReasons.add(reason);
        findings.add(Finding.note(code, place, reason, mend));
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** Each as the rest of the sentence "draft because". */
    List<String> draftReasons() {
        return List.copyOf(draftReasons);
    }
}

package cyclepacket.packet;

import cyclepacket.course.Course;
import cyclepacket.exchange.LedgerCsv;
import cyclepacket.exchange.LedgerJson;
import cyclepacket.exchange.PacketJson;
import cyclepacket.exchange.SuppliesJson;
import cyclepacket.finding.Finding;
import cyclepacket.intake.Intake;
import cyclepacket.intake.PlanReader;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.page.ClinicWords;
import cyclepacket.page.LedgerTable;
import cyclepacket.page.SuppliesTable;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.safety.SafetyCheck;
import cyclepacket.safety.Verdict;
import cyclepacket.supply.SupplyPlan;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One plan, read, computed and checked; nothing is written yet. */
public final class Reckoning {
    private final Intake intake;
    private final Optional<Computed> computed;
    private final Optional<Verdict> verdict;
    private final List<Finding> findings;
    private final boolean isCountersigned;
    private final List<String> languageReasons;

    /** The four stages of one plan. */
    record Computed(PlanFiles files, Course course, CycleLedger ledger, SupplyPlan supply) {
        static Computed of(PlanFiles files) {
            Course course = Course.of(files);
            CycleLedger ledger = CycleLedger.of(files, course);
            return new Computed(files, course, ledger, SupplyPlan.of(files, ledger));
        }

        /** The same with the clinic's words in another language; every sum stays as it is. */
        Computed in(String language) {
            PlanFiles spoken = ClinicWords.in(files, language);
            return spoken == files ? this : of(spoken);
        }
    }

    private Reckoning(Intake intake) {
        this.intake = intake;
        computed = intake.files().value().map(Computed::of);
        languageReasons = List.of();
        List<Finding> all = new ArrayList<>(intake.files().findings());
        CountersignCheck countersign = CountersignCheck.of(intake);
        isCountersigned = countersign.isValid();
        if (computed.isPresent()) {
            Computed own = computed.get();
            all.addAll(SafetyCheck.of(own.files(), own.course(), own.ledger(), own.supply()));
            all.addAll(countersign.findings());
        }
        List<Finding> located = Finding.sorted(all).stream()
                .map(finding -> finding.locatedBy(intake.places()))
                .toList();
        verdict = intake.files().value().map(files -> Verdict.of(files, located));
        findings = verdict.map(own -> withNotes(located, own)).orElse(Finding.sorted(located));
    }

    /** The same, with what the words of its language add. */
    private Reckoning(Reckoning base, LanguageCheck language) {
        intake = base.intake;
        computed = base.computed;
        verdict = base.verdict;
        isCountersigned = base.isCountersigned;
        languageReasons = language.draftReasons();
        List<Finding> all = new ArrayList<>(base.findings);
        language.findings().stream()
                .map(finding -> finding.locatedBy(intake.places()))
                .forEach(all::add);
        findings = Finding.sorted(all);
    }

    /** Overrides that accept nothing become findings too. */
    private List<Finding> withNotes(List<Finding> located, Verdict own) {
        List<Finding> all = new ArrayList<>(located);
        own.notes().stream().map(note -> note.locatedBy(intake.places())).forEach(all::add);
        return Finding.sorted(all);
    }

    /**
     * Reads a plan and everything it names, computes it and applies every rule.
     *
     * @throws IOException only when the plan file itself cannot be read
     */
    public static Reckoning of(Path plan) throws IOException {
        return new Reckoning(PlanReader.read(plan));
    }

    /** The same for a plan in a folder that holds its own medicines and no others, whatever the clinic file names. */
    static Reckoning ofCarried(Path plan) throws IOException {
        return new Reckoning(PlanReader.readCarried(plan));
    }

    /** The same as if the plan's file held these bytes. */
    static Reckoning of(Path plan, byte[] planBytes) throws IOException {
        return new Reckoning(PlanReader.read(plan, planBytes));
    }

    /** This plan with the check of the words that it would be printed in. */
    public Reckoning in(Path templates) {
        return computed.isEmpty() ? this : new Reckoning(this, LanguageCheck.of(templates, own().files()));
    }

    /** Every finding, sorted by file, line and column. */
    public List<Finding> findings() {
        return findings;
    }

    /** Whether something forbids printing. */
    public boolean isStopped() {
        return computed.isEmpty() || findings.stream().anyMatch(Finding::isStop);
    }

    /** Whether a stop makes the sums themselves doubtful, so that not even the ledger is shown. */
    public boolean areSumsStopped() {
        return computed.isEmpty()
                || findings.stream().anyMatch(finding -> finding.isStop() && SafetyCheck.touchesSums(finding.code()));
    }

    /** The day the issue was prepared, which is "today" of the computation. */
    public Optional<LocalDate> preparedOn() {
        return computed.map(own -> own.files().plan().prepared().on());
    }

    /** A table for a person. */
    public String ledgerTable() {
        return LedgerTable.of(own().ledger());
    }

    /** The contract that other programs read. */
    public String ledgerJson() {
        return LedgerJson.of(own().files().plan(), own().course(), own().ledger());
    }

    public String ledgerCsv() {
        return LedgerCsv.of(own().ledger());
    }

    /** What to order and by when, for a person. */
    public String suppliesTable() {
        return SuppliesTable.of(own().files(), own().supply());
    }

    /** What to order and by when: a contract that other programs read. */
    public String suppliesJson() {
        return SuppliesJson.of(own().files().plan(), own().supply());
    }

    /** The findings alone, for a program. */
    public String findingsJson() {
        return PacketJson.of(findings);
    }

    /** What a second person keys in for this plan. */
    public List<Question> questions() {
        return SecondLook.questions(own().files(), own().course());
    }

    Optional<Plan> planAndIssue() {
        return computed.map(own -> own.files().plan());
    }

    Computed own() {
        return computed.orElseThrow(() -> new IllegalStateException("the plan could not be read"));
    }

    Intake intake() {
        return intake;
    }

    Verdict verdict() {
        return verdict.orElseThrow();
    }

    boolean isCountersigned() {
        return isCountersigned;
    }

    /** A packet is final when a second person keyed it in and every warning was looked at. */
    boolean isDraft() {
        return !draftReasons().isEmpty();
    }

    /** Each as the rest of the sentence "draft because". */
    List<String> draftReasons() {
        List<String> reasons = new ArrayList<>();
        if (own().files().plan().countersigned().isEmpty()) {
            reasons.add("nobody has countersigned it");
        } else if (!isCountersigned) {
            reasons.add("it was edited after it was countersigned");
        }
        int open = verdict().open().size();
        if (open > 0) {
            reasons.add(open + (open == 1 ? " warning waits" : " warnings wait") + " for a line under overrides");
        }
        reasons.addAll(languageReasons);
        return List.copyOf(reasons);
    }
}

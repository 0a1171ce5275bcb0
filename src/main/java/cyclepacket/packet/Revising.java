package cyclepacket.packet;

import cyclepacket.exchange.RegisterEntry;
import cyclepacket.finding.Finding;
import cyclepacket.intake.FlowLine;
import cyclepacket.intake.PlanEdit;
import cyclepacket.page.CallWords;
import cyclepacket.page.ChangedTable;
import cyclepacket.plan.Plan;
import cyclepacket.plan.Revision.What;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The next issue of a plan: it starts from what was given, raises the issue number, names the one it retires and loses
 * its countersign. Written whole or not at all.
 */
public final class Revising {
    private final Path plan;
    private final Path out;
    private final byte[] before;
    private final byte[] after;
    private final Reckoning old;
    private final Reckoning next;
    private final Revise revise;
    private final String table;
    private final Path templates;

    private final List<String> doubts;

    private Revising(
            Path plan, Path out, byte[] before, byte[] after, Revise revise, Path templates, Optional<Integer> onDoor)
            throws IOException {
        this.plan = plan;
        this.out = out;
        this.before = before;
        this.after = after;
        this.revise = revise;
        this.templates = templates;
        old = Reckoning.of(plan, before);
        next = Reckoning.of(plan, after);
        Optional<Reckoning> retired = next.planAndIssue().isEmpty() ? Optional.empty() : retired();
        table = next.planAndIssue().isEmpty()
                ? ""
                : ChangedTable.of(
                        templates,
                        Press.packetFacts(retired.orElse(old), Optional.empty(), ""),
                        Press.packetFacts(next, Optional.empty(), ""),
                        revise.on());
        doubts = doubts(onDoor, retired.isPresent());
    }

    /** The issue on the door as it was printed; the plan as it stands when nobody printed it. */
    private Optional<Reckoning> retired() throws IOException {
        boolean isOwn = replaces() == old.own().files().plan().issue();
        return Replaced.find(out, plan, next).or(() -> isOwn ? Optional.of(old) : Optional.empty());
    }

    private List<String> doubts(Optional<Integer> onDoor, boolean isFound) {
        List<String> doubts = new ArrayList<>();
        if (next.planAndIssue().isEmpty()) {
            return doubts;
        }
        if (onDoor.isEmpty()) {
            doubts.add("no issue of " + old.own().files().plan().id() + " was printed as final into " + out + "; issue "
                    + replaces() + " is named as the one to throw away because the plan says so");
        }
        if (!isFound) {
            doubts.add("the stored plan of issue " + replaces() + " was not found; the table compares with the plan"
                    + " as it stands, and the page What changed will have no list");
        }
        return List.copyOf(doubts);
    }

    /**
     * Works the next issue out; nothing is written yet.
     *
     * @param out the folder with the register, which knows the issue on the door
     * @param home the project's folder, with the wording below it
     * @throws Unclear if the plan cannot be read or a change does not fit it
     */
    public static Revising of(Path plan, Path out, Path home, Revise revise) throws IOException {
        byte[] before = Files.readAllBytes(plan);
        Reckoning old = Reckoning.of(plan, before);
        Plan own = old.planAndIssue().orElseThrow(() -> unread(old));
        Optional<Integer> onDoor = Register.of(out, own.id()).latestFinal().map(RegisterEntry::issue);
        onDoor.filter(latest -> latest > own.issue()).ifPresent(latest -> {
            throw outdated(own, latest, out);
        });
        int issue = own.issue() + 1;
        // What was printed but never became final is on no door.
        int replaces = onDoor.orElse(own.issue());
        revise.changes().forEach(change -> change.requireFrom(revise.on()));
        byte[] after = PlanFile.edited(before, text -> edited(text, own, revise, issue, replaces));
        return new Revising(plan, out, before, after, revise, home.resolve("templates"), onDoor);
    }

    /** What a later issue changed would be lost without a word. */
    private static Unclear outdated(Plan own, int latest, Path out) {
        return new Unclear("This plan is issue " + own.issue() + ", and issue " + latest
                + " was printed as final since. Start from the plan of issue " + latest + "; a copy of it lies in "
                + KeptPlan.folder(out, own.id(), latest) + ". Nothing was written.");
    }

    private static Unclear unread(Reckoning reckoning) {
        Finding first = reckoning.findings().stream()
                .filter(Finding::isStop)
                .findFirst()
                .orElseThrow();
        return new Unclear(first.text() + "; " + first.mend() + ".");
    }

    private static PlanEdit edited(PlanEdit text, Plan own, Revise revise, int issue, int replaces) {
        PlanEdit edit = text.put("/issue", Integer.toString(issue))
                .put("/replaces", Integer.toString(replaces), "issue")
                .put("/order/reference", FlowLine.text(revise.order()))
                .put("/order/date", revise.orderedOn().orElse(revise.on()).toString())
                .put("/prepared/by", FlowLine.text(revise.by()))
                .put("/prepared/on", revise.on().toString())
                .clear("/overrides")
                .remove("countersigned");
        if (revise.orderedBy().isPresent()) {
            edit = edit.put("/order/by", FlowLine.text(revise.orderedBy().get()));
        }
        for (Change change : revise.changes()) {
            edit = ChangeText.applied(edit, own, revise, change)
                    .append("/revised", ChangeText.line(revise, change, issue));
        }
        return edit;
    }

    public int issue() {
        return next.own().files().plan().issue();
    }

    public int replaces() {
        return next.own().files().plan().replaces().orElseThrow();
    }

    /** Every finding of the next issue. */
    public List<Finding> findings() {
        return next.findings();
    }

    /** Whether a stop forbids the next issue. */
    public boolean isStopped() {
        return next.isStopped();
    }

    /** What is not known of the issue that is thrown away, each as the rest of a note. */
    public List<String> doubts() {
        return doubts;
    }

    /** Every day from the day of the call on that differs, before and now; empty when none does. */
    public String table() {
        return table;
    }

    /** What to say and ask on the phone, in the order of the call. */
    public List<String> say() {
        return CallWords.of(templates, Press.packetFacts(next, Optional.empty(), ""));
    }

    /** What must be shown to the patient again, each as one sentence. */
    public List<String> teachAgain() {
        List<String> sentences = new ArrayList<>();
        for (Change change : revise.changes()) {
            if (change.what() == What.SWAP) {
                String product = change.now().orElseThrow();
                sentences.add("The teach-back of " + change.of().orElseThrow() + " is void.");
                sentences.add("Teach again with " + product
                        + ": prepare, set the amount and read it, inject and hold, after, store"
                        + (isPen(product) ? ", and act a new-cartridge evening." : "."));
            }
        }
        return sentences;
    }

    private boolean isPen(String medicine) {
        return next.own()
                .files()
                .medicine(medicine)
                .flatMap(own -> own.device().pen())
                .isPresent();
    }

    /** Evenings before the call that nobody told of are stops of their own; this names the first day they count from. */
    public LocalDate on() {
        return revise.on();
    }

    /**
     * Keeps the files of the issue that is retired and writes the plan.
     *
     * @throws ChangedMeanwhile when somebody else wrote the plan since it was read
     */
    public void write() throws IOException {
        Plan own = old.own().files().plan();
        PlanFile.replace(plan, before, after);
        Path folder = out.resolve(own.id());
        Durable.createFolders(folder);
        FolderLock.holding(folder, () -> {
            if (KeptPlan.find(out, own.id(), own.issue()).isEmpty()) {
                KeptPlan.keep(out, own.id(), own.issue(), old.intake().sources());
            }
            return own.issue();
        });
    }
}

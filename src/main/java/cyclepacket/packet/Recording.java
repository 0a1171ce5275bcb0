package cyclepacket.packet;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Severity;
import cyclepacket.intake.FlowLine;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.page.RecordWords;
import cyclepacket.plan.Plan;
import cyclepacket.plan.RecordLine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One fact on its way into a plan: what it means is known before anything is written. */
public final class Recording {
    /** Lack of a line, or a line still to come, is no fault of the fact that is written now. */
    private static final Set<String> NOT_ITS_FAULT =
            Set.of("RECORD-GAP", "RECORD-IN-FUTURE", "RECORD-IN-QUESTION", "RECORD-NOT-CONFIRMED");

    private final Path plan;
    private final byte[] before;
    private final byte[] after;
    private final List<String> words;
    private final List<Finding> doubts;
    private final String added;

    private Recording(Path plan, byte[] before, byte[] after, List<String> words, List<Finding> doubts, String added) {
        this.plan = plan;
        this.before = before;
        this.after = after;
        this.words = List.copyOf(words);
        this.doubts = List.copyOf(doubts);
        this.added = added;
    }

    /**
     * What happened with one injection. What cannot be so is written all the same, marked in question.
     *
     * @throws Unclear if the plan cannot be read, or an answer is no value of the format
     */
    public static Recording of(Path plan, Happening told) throws IOException {
        byte[] before = Files.readAllBytes(plan);
        Reckoning known = Reckoning.of(plan, before);
        requireRead(known);
        int index = place(known.own().files().plan(), told.evening());
        LocalDate today = later(known.own().files().plan().prepared().on(), told.evening());
        Reckoning then = Reckoning.of(plan, asOf(before, today));
        Reckoning now = Reckoning.of(plan, asOf(spliced(before, index, told.line(false)), today));
        requireRead(now);
        List<Finding> doubts = new ArrayList<>();
        if (!isExplained(told)) {
            doubts.addAll(fresh(then, now));
            Stock.outOfOrder(then.own(), told).ifPresent(doubts::add);
        }
        byte[] after = spliced(before, index, told.line(!doubts.isEmpty()));
        return new Recording(plan, before, after, words(then, now, told, index), doubts, told.line(!doubts.isEmpty()));
    }

    private static boolean isExplained(Happening told) {
        return told.reason().isPresent() && told.by().isPresent();
    }

    /** A box that came: the last one in loading order. */
    public static Recording received(Path plan, String medicine, Box box) throws IOException {
        byte[] before = Files.readAllBytes(plan);
        Reckoning known = Reckoning.of(plan, before);
        requireRead(known);
        byte[] after = PlanFile.edited(before, text -> text.append("/on-hand/" + medicine, box.line()));
        Reckoning now = Reckoning.of(plan, after);
        requireRead(now);
        List<String> words = RecordWords.ofStock(ledger(known, medicine), ledger(now, medicine));
        return new Recording(plan, before, after, words, List.of(), box.line());
    }

    /**
     * A box that was thrown away. One that was never opened keeps its number and gives nothing; one in use ended on that
     * evening with its rest.
     */
    public static Recording discarded(Path plan, String medicine, int box, LocalDate on, String reason, String by)
            throws IOException {
        byte[] before = Files.readAllBytes(plan);
        Reckoning known = Reckoning.of(plan, before);
        requireRead(known);
        Stock stock = Stock.find(known.own(), medicine, box);
        if (stock.isInUse()) {
            int index = place(known.own().files().plan(), on);
            String line = new FlowLine()
                    .plain("date", on)
                    .text("medicine", medicine)
                    .plain("loaded", stock.next())
                    .text("reason", reason)
                    .text("by", by)
                    .toString();
            return settled(plan, before, spliced(before, index, line), medicine, line);
        }
        byte[] after = PlanFile.edited(before, text -> stock.thrownAway(text, on, reason));
        return settled(plan, before, after, medicine, "box " + box + " thrown away");
    }

    private static Recording settled(Path plan, byte[] before, byte[] after, String medicine, String added)
            throws IOException {
        Reckoning then = Reckoning.of(plan, before);
        Reckoning now = Reckoning.of(plan, after);
        requireRead(now);
        List<String> words = RecordWords.ofStock(ledger(then, medicine), ledger(now, medicine));
        return new Recording(plan, before, after, words, List.of(), added);
    }

    /** Gives the lines in question of one evening the reason and the name they wait for. */
    public static Recording explained(Path plan, LocalDate evening, String medicine, String reason, String by)
            throws IOException {
        byte[] before = Files.readAllBytes(plan);
        Reckoning known = Reckoning.of(plan, before);
        requireRead(known);
        byte[] after = before;
        List<RecordLine> lines = known.own().files().plan().record();
        boolean found = false;
        for (int index = 0; index < lines.size(); index++) {
            RecordLine line = lines.get(index);
            if (line.date().equals(evening) && line.medicine().equals(medicine) && !line.isExplained()) {
                found = true;
                String at = "/record/" + index;
                after = PlanFile.edited(
                        after,
                        text -> text.put(at + "/reason", FlowLine.text(reason)).put(at + "/by", FlowLine.text(by)));
            }
        }
        if (!found) {
            throw new Unclear("no line of that evening waits for a reason" + "; check the evening and the medicine.");
        }
        return settled(plan, before, after, medicine, "reason: " + reason + ", by " + by);
    }

    private static byte[] spliced(byte[] before, int index, String line) {
        return PlanFile.edited(before, text -> text.insert("/record", index, line));
    }

    /** Oldest first: behind every line of an earlier evening or the same one. */
    private static int place(Plan plan, LocalDate evening) {
        int index = 0;
        for (int line = 0; line < plan.record().size(); line++) {
            index = plan.record().get(line).date().isAfter(evening) ? index : line + 1;
        }
        return index;
    }

    /** The plan as it would be judged by an issue that is prepared on the evening of the fact. */
    private static byte[] asOf(byte[] plan, LocalDate today) {
        return PlanFile.edited(plan, text -> text.put("/prepared/on", today.toString()));
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    private static List<Finding> fresh(Reckoning then, Reckoning now) {
        Set<String> known = new HashSet<>();
        then.findings().forEach(found -> known.add(found.code() + found.text()));
        return now.findings().stream()
                .filter(found ->
                        found.severity() == Severity.STOP && found.code().startsWith("RECORD-"))
                .filter(found -> !NOT_ITS_FAULT.contains(found.code()))
                .filter(found -> !known.contains(found.code() + found.text()))
                .toList();
    }

    private static void requireRead(Reckoning reckoning) {
        if (reckoning.planAndIssue().isEmpty()) {
            Finding first = reckoning.findings().stream()
                    .filter(Finding::isStop)
                    .findFirst()
                    .orElseThrow();
            throw new Unclear(first.text() + "; " + first.mend() + ".");
        }
    }

    private static Optional<MedicineLedger> ledger(Reckoning reckoning, String medicine) {
        return reckoning.own().ledger().of(medicine);
    }

    private static List<String> words(Reckoning then, Reckoning now, Happening told, int index) {
        List<String> words = new ArrayList<>();
        Optional<MedicineLedger> ledger = ledger(now, told.medicine());
        if (ledger.isPresent()) {
            words.addAll(RecordWords.of(
                    ledger(then, told.medicine()),
                    ledger.get(),
                    now.own().files().plan().record().get(index),
                    index));
        }
        return words;
    }

    /** What it means, in sentences for the phone. */
    public List<String> words() {
        return words;
    }

    /** Why the line is in question; empty when it can be true. */
    public List<Finding> doubts() {
        return doubts;
    }

    /** The line, or what it does. */
    public String added() {
        return added;
    }

    /** @throws ChangedMeanwhile when somebody else wrote the plan since it was read */
    public void write() throws IOException {
        PlanFile.replace(plan, before, after);
    }
}

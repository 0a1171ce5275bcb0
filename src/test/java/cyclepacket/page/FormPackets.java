package cyclepacket.page;

import cyclepacket.LaidOut;
import cyclepacket.course.Course;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.plan.PlanFiles;
import cyclepacket.supply.SupplyPlan;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Packets of every form and protocol: the demo's plans, and a small plan for each protocol that has none. */
final class FormPackets {
    /** Anchors of the small plans, by protocol. */
    static final Map<String, String> ANCHORS = Map.of(
            "antagonist-step", "{S1: 2027-03-03}",
            "nasal-agonist", "{ML: 2027-03-03}",
            "microdose-flare", "{LP: 2027-03-10, F1: 2027-03-13, S1: 2027-03-15}",
            "progestin-primed", "{S1: 2027-03-03}",
            "minimal-stimulation", "{CD1: 2027-03-01, S1: 2027-03-08}",
            "low-dose-insemination", "{CD1: 2027-03-01, S1: 2027-03-03, I: \"2027-03-15T09:00\"}",
            "two-medicine-trigger", "{S1: 2027-03-03, R: \"2027-03-15T09:00\"}",
            "frozen-natural", "{LH: 2027-03-10, P: \"2027-03-12T20:00\"}");

    static final List<String> NAMES = List.of(
            "DA-05120",
            "LM-06233-issue-2",
            "EF-07318-issue-2",
            "FT-08440-issue-2",
            "LS-09102",
            "antagonist-step",
            "nasal-agonist",
            "microdose-flare",
            "progestin-primed",
            "minimal-stimulation",
            "low-dose-insemination",
            "two-medicine-trigger",
            "frozen-natural");

    private FormPackets() {}

    static PacketView view(String name) {
        return new PacketViews(facts(name), Wording.load(DemoPlan.TEMPLATES, "en")).view();
    }

    static PacketFacts facts(String name) {
        try {
            return facts(laidOut(name));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static PacketFacts facts(LaidOut laid) {
        try {
            PlanFiles files = laid.files();
            Course course = Course.of(files);
            CycleLedger ledger = CycleLedger.of(files, course);
            return new PacketFacts(
                    files, course, ledger, SupplyPlan.of(files, ledger), "ABCD-EFGH-JKM", false, Optional.empty());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static LaidOut laidOut(String name) throws IOException {
        return ANCHORS.containsKey(name) ? LaidOut.plan(name, ANCHORS.get(name)) : LaidOut.demo(name);
    }
}

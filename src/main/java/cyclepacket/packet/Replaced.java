package cyclepacket.packet;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.intake.EarlierIssue;
import cyclepacket.plan.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Finds the issue that another one replaces, to compute it again from what was stored with it. */
final class Replaced {
    private static final String LOST = "REPLACED-PLAN-LOST";

    private Replaced() {}

    /**
     * The replaced issue, from the files kept with it, from its chart copy, or from a plan in the same folder; in this
     * order.
     */
    static Optional<Reckoning> find(Path out, Path planFile, Reckoning reckoning) throws IOException {
        Optional<Plan> plan = reckoning.planAndIssue();
        if (plan.isEmpty() || plan.get().replaces().isEmpty()) {
            return Optional.empty();
        }
        String id = plan.get().id();
        int issue = plan.get().replaces().get();
        Optional<Path> kept = KeptPlan.find(out, id, issue);
        if (kept.isPresent()) {
            return read(kept.get());
        }
        Path chart = new OutFolder(out, id, issue).path().resolve("chart.pdf");
        if (Files.exists(chart)) {
            try (CarriedPlan carried = CarriedPlan.unpack(chart)) {
                return read(carried.plan());
            }
        }
        Optional<Path> beside = EarlierIssue.of(planFile, id, issue);
        return beside.isPresent() ? read(beside.get()) : Optional.empty();
    }

    /** Empty when the file no longer reads as a plan. */
    static Optional<Reckoning> read(Path plan) throws IOException {
        return Optional.of(Reckoning.ofCarried(plan))
                .filter(read -> read.planAndIssue().isPresent());
    }

    /** A note for the chart copy when the list of changes could not be made. */
    static List<Finding> lost(Reckoning reckoning, Optional<Reckoning> replaced) {
        Optional<Integer> issue = reckoning.own().files().plan().replaces();
        if (issue.isEmpty() || replaced.isPresent()) {
            return List.of();
        }
        return List.of(Finding.note(
                        LOST,
                        Place.at(reckoning.own().files().planFile(), "/replaces"),
                        "the stored plan of issue " + issue.get()
                                + " was not found, so the page What changed has no list",
                        "print into the folder that holds that issue")
                .locatedBy(reckoning.intake().places()));
    }
}

package cyclepacket.supply;

import cyclepacket.course.Course;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.plan.PlanFiles;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How long every medicine surely lasts, by when more must be ordered, what to buy, and everything else on the table;
 * overfill never counts.
 *
 * @param longestUntil while the trigger is not called: the last evening of the longest course, to which all is counted
 */
public record SupplyPlan(List<SupplyLine> lines, List<SupplyItem> items, Optional<LocalDate> longestUntil) {
    public SupplyPlan {
        lines = List.copyOf(lines);
        items = List.copyOf(items);
        Objects.requireNonNull(longestUntil, "longestUntil");
    }

    /** Counts by the plan's days; by the protocol's longest course while nobody has called the trigger. */
    public static SupplyPlan of(PlanFiles files, CycleLedger ledger) {
        return LongestCourse.of(files)
                .map(longest -> of(
                        longest.files(),
                        CycleLedger.of(longest.files(), Course.of(longest.files())),
                        Optional.of(longest.lastEvening())))
                .orElseGet(() -> of(files, ledger, Optional.empty()));
    }

    private static SupplyPlan of(PlanFiles files, CycleLedger ledger, Optional<LocalDate> longestUntil) {
        PharmacyDays days =
                new PharmacyDays(files.clinic().pharmacy(), files.clinic().zone());
        List<CourseOfLength> lengths = CourseOfLength.all(files);
        List<SupplyLine> lines = ledger.medicines().stream()
                .map(medicine -> new SupplyLineBuilder(files, medicine, days, lengths).build())
                .toList();
        return new SupplyPlan(lines, new SupplyItems(files, ledger, lines).all(), longestUntil);
    }

    public Optional<SupplyLine> of(String medicine) {
        return lines.stream()
                .filter(line -> line.medicine().id().equals(medicine))
                .findFirst();
    }
}

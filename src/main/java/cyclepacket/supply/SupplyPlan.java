package cyclepacket.supply;

import cyclepacket.ledger.CycleLedger;
import cyclepacket.plan.PlanFiles;
import java.util.List;
import java.util.Optional;

/**
 * How long every medicine surely lasts, by when more must be ordered, what to buy, and everything else on the table;
 * overfill never counts.
 */
public record SupplyPlan(List<SupplyLine> lines, List<SupplyItem> items) {
    public SupplyPlan {
        lines = List.copyOf(lines);
        items = List.copyOf(items);
    }

    public static SupplyPlan of(PlanFiles files, CycleLedger ledger) {
        PharmacyDays days =
                new PharmacyDays(files.clinic().pharmacy(), files.clinic().zone());
        List<CourseOfLength> lengths = CourseOfLength.all(files);
        List<SupplyLine> lines = ledger.medicines().stream()
                .map(medicine -> new SupplyLineBuilder(files, medicine, days, lengths).build())
                .toList();
        return new SupplyPlan(lines, new SupplyItems(files, ledger, lines).all());
    }

    public Optional<SupplyLine> of(String medicine) {
        return lines.stream()
                .filter(line -> line.medicine().id().equals(medicine))
                .findFirst();
    }
}

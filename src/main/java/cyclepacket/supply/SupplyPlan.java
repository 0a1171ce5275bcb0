package cyclepacket.supply;

import cyclepacket.ledger.Covered;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.PlanFiles;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/** How long every medicine surely lasts and by when more must be ordered; overfill never counts. */
public record SupplyPlan(List<SupplyLine> lines) {
    public SupplyPlan {
        lines = List.copyOf(lines);
    }

    public static SupplyPlan of(PlanFiles files, CycleLedger ledger) {
        ZoneId zone = files.clinic().zone();
        PharmacyDays days = new PharmacyDays(files.clinic().pharmacy(), zone);
        return new SupplyPlan(ledger.medicines().stream()
                .map(medicine -> line(files, medicine, days))
                .toList());
    }

    public Optional<SupplyLine> of(String medicine) {
        return lines.stream()
                .filter(line -> line.medicine().id().equals(medicine))
                .findFirst();
    }

    private static SupplyLine line(PlanFiles files, MedicineLedger ledger, PharmacyDays days) {
        Covered covered = ledger.covered();
        Optional<ZonedDateTime> order =
                covered.firstShort().flatMap(day -> days.lastOrder(day, injectionTime(ledger, day, days.zone())));
        return new SupplyLine(
                ledger.medicine(),
                ledger.stillNeeded(),
                covered,
                order,
                needles(ledger, files.clinic().rules().spareNeedles()));
    }

    private static LocalTime injectionTime(MedicineLedger ledger, LocalDate day, ZoneId zone) {
        return ledger.day(day)
                .map(LedgerDay::evening)
                .flatMap(evening -> evening.at())
                .map(at -> at.withZoneSameInstant(zone).toLocalTime())
                .orElse(LocalTime.MIN);
    }

    /** Counted with the least content, which needs the most cartridges; what is short comes in the largest size. */
    private static int needles(MedicineLedger ledger, int spare) {
        if (ledger.medicine().device().pen().isEmpty()) {
            return 0;
        }
        long injections =
                ledger.draws().stream().filter(draw -> !draw.isRecorded()).count();
        if (injections == 0) {
            return 0;
        }
        return Math.toIntExact(injections + newCartridges(ledger) + spare);
    }

    /** How many cartridges can come to their end before the last injection is done, each one more needle. */
    private static long newCartridges(MedicineLedger ledger) {
        Dose total = ledger.draws().get(ledger.draws().size() - 1).after();
        long ends = ledger.containers().stream()
                .filter(line -> !line.hasEnded() && line.leastTotal().isLessThan(total))
                .count();
        Dose shortage = ledger.covered().shortAtMost();
        Dose largest = ledger.medicine().sizes().stream()
                .map(size -> size.gives().least())
                .max(Dose::compareTo)
                .orElseThrow();
        long bought = (shortage.milliUnits() + largest.milliUnits() - 1) / largest.milliUnits();
        return ends + Math.max(0, bought - 1);
    }
}

package cyclepacket.safety;

import cyclepacket.finding.Place;
import cyclepacket.ledger.Container;
import cyclepacket.ledger.ContainerLine;
import cyclepacket.ledger.Draw;
import cyclepacket.ledger.MedicineLedger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How long one container at home may still be wanted, at the latest.
 *
 * @param stock its line under on-hand
 */
record UseSpan(String medicine, int stock, Container container, LocalDate lastUse) {

    static List<UseSpan> all(ComputedPlan plan) {
        List<UseSpan> all = new ArrayList<>();
        for (MedicineLedger ledger : plan.ledger().medicines()) {
            String medicine = ledger.medicine().id();
            boolean isPen = ledger.medicine().device().pen().isPresent()
                    || ledger.medicine().device().stockVial().isPresent();
            for (ContainerLine line : ledger.containers()) {
                Optional<LocalDate> last = isPen ? lastOfPen(ledger, line) : lastOfSyringe(plan, ledger, line);
                last.ifPresent(
                        day -> all.add(new UseSpan(medicine, line.container().stock(), line.container(), day)));
            }
        }
        return all;
    }

    /** A cartridge is wanted until its latest end; one that may outlast the course until the last dose. */
    private static Optional<LocalDate> lastOfPen(MedicineLedger ledger, ContainerLine line) {
        if (line.hasEnded() || line.firstOpening().isEmpty()) {
            return Optional.empty();
        }
        return line.lastEnd().or(() -> ledger.draws().stream().map(Draw::date).max(LocalDate::compareTo));
    }

    /** Syringes are used in their order, one a dose; while the day is not known, at the latest one. */
    private static Optional<LocalDate> lastOfSyringe(ComputedPlan plan, MedicineLedger ledger, ContainerLine line) {
        if (ledger.draws().isEmpty()) {
            return plan.protocol().rows().stream()
                    .filter(row -> row.medicine().equals(ledger.medicine().id()))
                    .flatMap(row -> plan.course().anchors().latestDate(row.lastDay()).stream())
                    .max(LocalDate::compareTo)
                    .filter(day -> line.container().number() == 1);
        }
        return ledger.draws().stream()
                .filter(draw -> !draw.isRecorded() && !draw.after().isLessThan(line.leastTotal()))
                .findFirst()
                .filter(draw -> draw.before().isLessThan(line.leastTotal()))
                .map(Draw::date);
    }

    Place place(ComputedPlan plan, String key) {
        return plan.inPlan("/on-hand/" + medicine + "/" + stock + "/" + key);
    }
}

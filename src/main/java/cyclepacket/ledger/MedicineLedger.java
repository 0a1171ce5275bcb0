package cyclepacket.ledger;

import cyclepacket.plan.Medicine;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What every container of one medicine gives to every injection.
 *
 * @param days every evening of the course or the record, in order
 * @param containers every container at home, in loading order, with the trail of its sums
 * @param draws every setting, in order
 * @param lookUp for the coming end only: the end after it, by evening and number
 * @param doubts what the record leaves open
 */
public record MedicineLedger(
        Medicine medicine,
        List<LedgerDay> days,
        List<ContainerLine> containers,
        List<Draw> draws,
        Covered covered,
        List<LookUpRow> lookUp,
        List<RecordDoubt> doubts) {
    public MedicineLedger {
        Objects.requireNonNull(medicine, "medicine");
        days = List.copyOf(days);
        containers = List.copyOf(containers);
        draws = List.copyOf(draws);
        Objects.requireNonNull(covered, "covered");
        lookUp = List.copyOf(lookUp);
        doubts = List.copyOf(doubts);
    }

    public Optional<LedgerDay> day(LocalDate date) {
        return days.stream().filter(day -> day.evening().date().equals(date)).findFirst();
    }

    /** The containers that can end in the course or have ended, in loading order. */
    public List<ContainerLine> changes() {
        return containers.stream().filter(line -> line.firstEnd().isPresent()).toList();
    }

    /** The container that ends next: the first whose end is not in the record. */
    public Optional<ContainerLine> coming() {
        return changes().stream().filter(line -> !line.hasEnded()).findFirst();
    }

    /** The container in use now, or the first one to be opened; empty when none is at home. */
    public Optional<ContainerLine> inUse() {
        return containers.stream().filter(line -> !line.hasEnded()).findFirst();
    }

    /** Everything still to be drawn. */
    public Dose stillNeeded() {
        return draws.stream()
                .filter(draw -> !draw.isRecorded())
                .map(draw -> draw.after().minus(draw.before()))
                .reduce(Dose.zero(medicine.unit()), Dose::plus);
    }
}

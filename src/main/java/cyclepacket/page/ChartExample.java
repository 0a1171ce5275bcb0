package cyclepacket.page;

import cyclepacket.ledger.ContainerLine;
import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.Draw;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.LookUpRow;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Dial;
import cyclepacket.quantity.Dose;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A number to act with that is nowhere in this plan: a mark above every dose, so that no window of this patient can show
 * it; only where the dial has none, another mark that the plan does not use.
 */
final class ChartExample {
    private ChartExample() {}

    static Optional<Dose> of(MedicineLedger ledger) {
        return ledger.medicine().device().pen().flatMap(pen -> pick(ledger, pen.dial()));
    }

    private static Optional<Dose> pick(MedicineLedger ledger, Dial dial) {
        TreeSet<Dose> used = used(ledger);
        Dose highest =
                ledger.draws().stream().map(Draw::dialled).max(Dose::compareTo).orElse(dial.least());
        Dose above = dial.markAtOrAbove(highest).max(dial.least());
        for (Dose mark = above; !mark.isMoreThan(dial.most()); mark = mark.plus(dial.step())) {
            if (!used.contains(mark)) {
                return Optional.of(mark);
            }
        }
        for (Dose mark = above.min(dial.most()); !mark.isLessThan(dial.least()); mark = mark.minus(dial.step())) {
            if (!used.contains(mark)) {
                return Optional.of(mark);
            }
        }
        return Optional.empty();
    }

    private static TreeSet<Dose> used(MedicineLedger ledger) {
        TreeSet<Dose> used = new TreeSet<>();
        for (Draw draw : ledger.draws()) {
            used.add(draw.dialled());
            used.add(draw.before());
            used.add(draw.after());
            draw.given().ifPresent(used::add);
            draw.stops().forEach(stop -> used.add(stop.window()));
        }
        for (ContainerLine line : ledger.containers()) {
            used.add(line.container().label());
            used.add(line.container().least());
            used.add(line.container().most());
        }
        for (LookUpRow row : ledger.lookUp()) {
            used.add(row.window());
            used.add(row.fromNext());
        }
        for (LedgerDay day : ledger.days()) {
            used.add(day.evening().ordered());
            for (DayChange change : day.changes()) {
                change.owed().ifPresent(owed -> used.add(owed.least()));
                change.owed().ifPresent(owed -> used.add(owed.most()));
            }
        }
        return used;
    }
}

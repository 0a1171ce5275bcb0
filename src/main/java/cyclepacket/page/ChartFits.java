package cyclepacket.page;

import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.Draw;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.Marks;
import cyclepacket.ledger.Owed;
import cyclepacket.plan.Device.CartridgePen;
import cyclepacket.plan.Device.Window;
import cyclepacket.plan.HouseRules;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Which numbers the window can show after one injection, if the forecast is right, and which it cannot. */
final class ChartFits {
    private final CartridgePen pen;
    private final Marks marks;
    private final LedgerDay day;
    private final Draw draw;

    ChartFits(CartridgePen pen, HouseRules rules, LedgerDay day, Draw draw) {
        this.pen = pen;
        this.day = day;
        this.draw = draw;
        marks = new Marks(pen.dial(), rules);
    }

    /** Whether the whole setting may come from one container: false when a container surely ends in this very injection. */
    boolean wholeFits() {
        return day.changes().stream().noneMatch(this::endsHereForCertain);
    }

    private boolean endsHereForCertain(DayChange change) {
        boolean elsewhere = day.changes().stream()
                .anyMatch(other -> other.leaving() == change.leaving() && other.setting() != change.setting());
        boolean empties = change.cause() == DayChange.Cause.EMPTY;
        return change.setting() == draw.number()
                && change.isCertain()
                && empties
                && !elsewhere
                && !leftBeforeIt(change);
    }

    /** A container that may also be left because of its in-use days gives nothing to this injection in that case. */
    private boolean leftBeforeIt(DayChange change) {
        return day.changes().stream()
                .anyMatch(
                        other -> other.leaving() == change.leaving() && other.cause() == DayChange.Cause.IN_USE_LIMIT);
    }

    /** The numbers in the window for an end that still owes so much; empty when it is a small remainder. */
    Optional<DoseRange> range(Owed owed) {
        return marks.printed(owed).flatMap(range -> {
            Dose most = range.most().min(draw.dialled());
            if (range.least().isMoreThan(most)) {
                return Optional.empty();
            }
            return Optional.of(
                    pen.window() == Window.OWED
                            ? new DoseRange(range.least(), most)
                            : new DoseRange(
                                    draw.dialled().minus(most), draw.dialled().minus(range.least())));
        });
    }

    /** Every other mark that this setting could stop at, as ranges. */
    List<DoseRange> off() {
        TreeSet<Dose> fitting = new TreeSet<>();
        for (DayChange change : day.changes()) {
            if (change.setting() == draw.number()) {
                change.owed().flatMap(this::range).ifPresent(range -> addMarks(range, fitting));
            }
        }
        Dose step = pen.dial().step();
        Dose first = pen.window() == Window.OWED ? step : Dose.zero(step.unit());
        List<DoseRange> off = new ArrayList<>();
        for (Dose mark = first; !isBeyond(mark); mark = mark.plus(step)) {
            if (!fitting.contains(mark)) {
                addTo(off, mark, step);
            }
        }
        return off;
    }

    private boolean isBeyond(Dose mark) {
        return pen.window() == Window.OWED ? mark.isMoreThan(draw.dialled()) : !mark.isLessThan(draw.dialled());
    }

    private void addMarks(DoseRange range, TreeSet<Dose> into) {
        for (Dose mark = range.least();
                !mark.isMoreThan(range.most());
                mark = mark.plus(pen.dial().step())) {
            into.add(mark);
        }
    }

    private static void addTo(List<DoseRange> off, Dose mark, Dose step) {
        int last = off.size() - 1;
        if (last >= 0 && off.get(last).most().plus(step).equals(mark)) {
            off.set(last, new DoseRange(off.get(last).least(), mark));
        } else {
            off.add(DoseRange.exactly(mark));
        }
    }
}

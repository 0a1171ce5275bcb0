package cyclepacket.actingout;

import static org.junit.jupiter.api.Assertions.assertTrue;

import cyclepacket.actingout.Foretold.Change;
import cyclepacket.actingout.Foretold.Entry;
import cyclepacket.course.Course;
import cyclepacket.ledger.ContainerLine;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.ledger.Owed;
import cyclepacket.ledger.RecordDoubt;
import cyclepacket.plan.Device.Window;
import cyclepacket.plan.PlanFiles;
import cyclepacket.quantity.Dose;
import java.util.Optional;
import java.util.Set;

/** Asks the ledger under test, and tells its answer in the words of the acting-out. */
final class ClosedForm {
    /** Questions that a true record may raise; every other doubt says that the record cannot be so. */
    private static final Set<RecordDoubt.Kind> QUESTIONS =
            Set.of(RecordDoubt.Kind.NOT_CONFIRMED, RecordDoubt.Kind.LOSS_WITH_STOP);

    private ClosedForm() {}

    static Foretold of(Case plan) {
        PlanFiles files = PlanText.of(plan);
        MedicineLedger ledger =
                CycleLedger.of(files, Course.of(files)).of(Case.MEDICINE).orElseThrow();
        return new Foretold(
                ledger.days().stream()
                        .flatMap(day -> entries(plan, day))
                        .sorted()
                        .toList(),
                ledger.changes().stream().map(ClosedForm::change).toList(),
                ledger.containers().stream().map(ClosedForm::trail).toList(),
                ledger.days().stream()
                        .filter(day -> plan.isPast(day.evening().date()))
                        .map(ClosedForm::lived)
                        .toList(),
                ledger.covered().surelyUntil(),
                ledger.covered().possiblyUntil(),
                ledger.covered().firstShort(),
                ledger.covered().shortAtMost().milliUnits(),
                ledger.doubts().stream()
                        .filter(doubt -> !QUESTIONS.contains(doubt.kind()))
                        .map(RecordDoubt::toString)
                        .toList());
    }

    private static java.util.stream.Stream<Entry> entries(Case plan, LedgerDay day) {
        return day.changes().stream().map(change -> entry(plan, day, change));
    }

    private static Entry entry(Case plan, LedgerDay day, DayChange change) {
        Optional<Owed> owed = change.owed();
        return new Entry(
                change.leaving(),
                day.evening().date(),
                change.setting(),
                change.cause() == DayChange.Cause.IN_USE_LIMIT,
                change.isCertain(),
                owed.map(range -> least(plan, range)).orElse(0L),
                owed.map(range -> range.most().milliUnits()).orElse(0L));
    }

    /** The smallest amount above zero is a thousandth, or a mark on a pen that stops at marks only. */
    private static long least(Case plan, Owed owed) {
        long smallest = plan.pen().window() == Window.OWED ? 1 : plan.pen().step();
        long least = owed.isAboveZero() ? smallest : owed.least().milliUnits();
        // A reader of the range would print a thousandth where the smallest dial mark belongs.
        assertTrue(
                least > 1 || owed.isAboveZero() || owed.isExact(),
                () -> "seed " + plan.seed() + ": " + owed + " does not say that it starts above zero");
        return least;
    }

    private static Lived lived(LedgerDay day) {
        long given = day.evening().given().map(Dose::milliUnits).orElse(0L);
        return new Lived(day.evening().date(), day.evening().state(), given);
    }

    private static Trail trail(ContainerLine line) {
        return new Trail(
                line.container().number(),
                line.leastTotal().milliUnits(),
                line.mostTotal().milliUnits(),
                line.firstOpening(),
                line.lastOpening(),
                line.lastSafeDay());
    }

    private static Change change(ContainerLine line) {
        return new Change(line.container().number(), line.firstEnd().orElseThrow(), line.lastEnd());
    }
}

package cyclepacket.ledger;

import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Works out where every container can end: forward from the contents, narrowed by what the record proves, then backward
 * from every number that was read.
 */
final class ContainerSums {
    private final Timeline line;
    private final List<Container> containers;
    private final long step;
    private final List<Boolean> explained;
    private final List<Ends> ends = new ArrayList<>();
    private final List<RecordDoubt> doubts = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    /** The settings in which the record proves that nothing ended. */
    private final BitSet proven = new BitSet();

    private final List<Integer> unknowns = new ArrayList<>();
    private int nextReading;

    /** One number that was read: on which setting, and the totals it allows. */
    private record Reading(int draw, long least, long most, boolean isExact, boolean isPutAway) {}

    /**
     * @param step the smallest distance between two settings
     * @param explained whether the n-th line of the record carries a reason and a name
     */
    ContainerSums(Timeline line, List<Container> containers, Dose step, List<Boolean> explained) {
        this(line, containers, step, explained, containers.size());
    }

    /** @param wanted how many containers are worked out at least; a look-up asks for no more than the next one */
    ContainerSums(Timeline line, List<Container> containers, Dose step, List<Boolean> explained, int wanted) {
        this.line = line;
        this.containers = List.copyOf(containers);
        this.step = step.milliUnits();
        this.explained = List.copyOf(explained);
        for (int index = 0; index < line.size(); index++) {
            collect(index, line.draw(index));
        }
        solve(wanted);
    }

    private void collect(int index, Draw draw) {
        if (draw.provesNoEnd()) {
            proven.set(index);
        }
        if (!draw.unknown().isZero()) {
            unknowns.add(index);
        }
        for (Draw.Stop stop : draw.stops()) {
            long total = stop.total().milliUnits();
            long least = stop.isConfirmed() ? total : draw.before().milliUnits();
            long most = stop.isConfirmed() ? total : mostUnconfirmed(draw);
            readings.add(new Reading(index, least, most, stop.isConfirmed(), stop.isPutAway()));
        }
    }

    /** When the whole setting was given after a stop, something of it was still owed. */
    private long mostUnconfirmed(Draw draw) {
        boolean restWasGiven = draw.given().filter(draw.dialled()::equals).isPresent();
        long after = draw.after().milliUnits() - (restWasGiven ? line.grain() : 0);
        return Math.max(after, draw.before().milliUnits());
    }

    /** The ends of every container that was worked out, in loading order. */
    List<Ends> ends() {
        return List.copyOf(ends);
    }

    List<RecordDoubt> doubts() {
        return List.copyOf(doubts);
    }

    private void solve(int wanted) {
        Branches before = Branches.start(line);
        for (int index = 0; index < containers.size(); index++) {
            if (index >= wanted && nextReading == readings.size()) {
                // Only a number that is still to be placed could narrow the containers before this one.
                return;
            }
            before = withRecord(index, before);
            ends.add(before.union());
            if (before.union().isKnown()) {
                tightenBack(index);
            }
        }
        if (nextReading < readings.size()) {
            int draw = readings.get(nextReading).draw();
            doubt(
                    RecordDoubt.Kind.NO_CONTAINER_LEFT,
                    draw,
                    line.draw(draw).date().toString());
        }
    }

    private Branches withRecord(int index, Branches before) {
        Branches forward = before.next(containers.get(index), unknowns, line);
        BitSet noEnds = index == containers.size() - 1 ? provenForLast() : proven;
        Branches open = forward.without(noEnds, line);
        if (nextReading == readings.size()) {
            return open.isEmpty() ? neverEnded(forward, noEnds) : open;
        }
        Reading reading = readings.get(nextReading);
        Branches gone = open.before(reading.draw(), line);
        boolean fits = !fitting(index, before, reading, true).isEmpty();
        boolean later = !gone.isEmpty() && mayBeLater(index + 1, gone, reading, false);
        if (!fits && (later || isNearOnlyLater(index, before, gone, reading))) {
            // It ran dry on an evening when nobody looked: the number belongs to a later container.
            return gone;
        }
        if (later) {
            doubt(
                    RecordDoubt.Kind.READING_UNCLEAR,
                    reading.draw(),
                    "container " + containers.get(index).number() + " or "
                            + containers.get(index + 1).number() + " on "
                            + line.draw(reading.draw()).date());
        }
        nextReading++;
        return read(index, before, reading);
    }

    /** With no further container at home, a whole setting that was given proves that the last one had not ended. */
    private BitSet provenForLast() {
        BitSet all = (BitSet) proven.clone();
        for (int index = 0; index < line.size(); index++) {
            Draw draw = line.draw(index);
            boolean wholeWasGiven = draw.isRecorded()
                    && draw.given().filter(draw.dialled()::equals).isPresent();
            if (wholeWasGiven) {
                all.set(index);
            }
        }
        return all;
    }

    /** Whether the number lies up to one step outside what a later container can hold, and further outside this one. */
    private boolean isNearOnlyLater(int index, Branches before, Branches gone, Reading reading) {
        return !gone.isEmpty()
                && !reading.isPutAway()
                && !isNear(index, before, reading)
                && mayBeLater(index + 1, gone, reading, true);
    }

    /** Whether a container after one that ended unseen can be the one that was read, exactly or to within one step. */
    private boolean mayBeLater(int index, Branches before, Reading reading, boolean withinAStep) {
        if (index >= containers.size()) {
            return false;
        }
        if (!fitting(index, before, reading, true).isEmpty() || (withinAStep && isNear(index, before, reading))) {
            return true;
        }
        Branches gone = before.next(containers.get(index), unknowns, line)
                .without(proven, line)
                .before(reading.draw(), line);
        return !gone.isEmpty() && mayBeLater(index + 1, gone, reading, withinAStep);
    }

    /** The totals that both the reading and this container's contents allow. */
    private Spans fitting(int index, Branches before, Reading reading, boolean withinInUseDays) {
        Container container = containers.get(index);
        Spans fitting = Spans.NONE;
        for (Map.Entry<Integer, Ends> branch : before.byMet().entrySet()) {
            long most = container.most().milliUnits() + unknownBefore(branch.getKey(), reading.draw());
            for (Opening opening : Opening.all(branch.getValue(), container.opened(), line)) {
                if (!withinInUseDays || opening.isUsableOn(reading.draw())) {
                    Spans reach = opening.totals().plus(container.least().milliUnits(), most);
                    fitting = fitting.with(reach.between(leastForOneStop(index, reading), reading.most()));
                }
            }
        }
        return fitting;
    }

    /** One number proves one stop: the container after it must hold the rest of the setting. */
    private long leastForOneStop(int index, Reading reading) {
        Draw draw = line.draw(reading.draw());
        boolean isLastStop = draw.stops().size() == 1 && draw.unknown().isZero();
        if (!isLastStop || index + 1 >= containers.size()) {
            return reading.least();
        }
        long mostOfNext = containers.get(index + 1).most().milliUnits();
        return Math.max(reading.least(), draw.after().milliUnits() - mostOfNext);
    }

    /** What nobody saw drawn in the unknown settings from number {@code met} on that lie before setting {@code draw}. */
    private long unknownBefore(int met, int draw) {
        long sum = 0;
        for (int index = met; index < unknowns.size() && unknowns.get(index) < draw; index++) {
            sum = Math.addExact(sum, line.draw(unknowns.get(index)).unknown().milliUnits());
        }
        return sum;
    }

    private Branches read(int index, Branches before, Reading reading) {
        Spans inTime = fitting(index, before, reading, true);
        Spans anyTime = fitting(index, before, reading, false);
        if (anyTime.isEmpty() && !reading.isPutAway() && !isNear(index, before, reading)) {
            doubt(RecordDoubt.Kind.FILL_IMPOSSIBLE, reading.draw(), fillText(index, before.union(), reading));
        } else if (inTime.isEmpty() && !anyTime.isEmpty()) {
            String what = "container " + containers.get(index).number() + " on "
                    + line.draw(reading.draw()).date();
            doubt(RecordDoubt.Kind.PAST_IN_USE, reading.draw(), what);
        }
        Spans allowed = reading.isExact() || anyTime.isEmpty()
                ? Spans.of(reading.least(), reading.most(), line.grain())
                : inTime.isEmpty() ? anyTime : inTime;
        int met = (int) unknowns.stream().filter(draw -> draw < reading.draw()).count();
        return Branches.of(met, new Ends(allowed, new TreeMap<>(), OptionalInt.of(reading.draw())));
    }

    /** A reading up to one step outside what the size can hold is taken as read. */
    private boolean isNear(int index, Branches before, Reading reading) {
        Container container = containers.get(index);
        int met = before.byMet().firstKey();
        long least = reading.least() - before.union().max();
        long most = reading.most() - before.union().min();
        return most >= container.least().milliUnits() - step
                && least <= container.most().milliUnits() + unknownBefore(met, reading.draw()) + step;
    }

    private String fillText(int index, Ends before, Reading reading) {
        Container container = containers.get(index);
        Dose low = new Dose(
                Math.max(reading.least() - before.max(), 0), container.label().unit());
        Dose high = new Dose(
                Math.max(reading.most() - before.min(), 0), container.label().unit());
        String fill = low.equals(high) ? low.toString() : low.number().toPlainString() + " to " + high;
        return "container " + container.number() + " gave " + fill + ", and one labelled " + container.label()
                + " gives " + container.least().number().toPlainString() + " to " + container.most();
    }

    private Branches neverEnded(Branches forward, BitSet noEnds) {
        Ends all = forward.union();
        long beyond = all.max();
        int contradiction = -1;
        for (int index = noEnds.nextSetBit(0); index >= 0; index = noEnds.nextSetBit(index + 1)) {
            if (line.start(index) <= beyond && beyond < line.endExclusive(index)) {
                contradiction = index;
                beyond = line.endExclusive(index);
            }
        }
        if (contradiction >= 0) {
            String drawn = line.draw(contradiction).after().toString();
            doubt(RecordDoubt.Kind.NO_END_WRITTEN, contradiction, drawn);
        }
        return Branches.of(
                forward.byMet().lastKey(),
                new Ends(Spans.of(beyond, beyond, line.grain()), new TreeMap<>(), OptionalInt.empty()));
    }

    /** The containers before a reading gave what is left of its total once the later ones' possible fills are off. */
    private void tightenBack(int read) {
        Ends after = ends.get(read);
        long unknown = unknownBefore(0, after.readAt().orElseThrow());
        for (int index = read - 1; index >= 0 && !ends.get(index).isKnown(); index--) {
            Container next = containers.get(index + 1);
            long least = after.min() - next.most().milliUnits() - unknown;
            long most = after.max() - next.least().milliUnits();
            Ends narrower = ends.get(index).within(least, most);
            if (narrower.isEmpty()) {
                // The reading lies up to one step outside, so the bounds it gives are as wide again.
                narrower = ends.get(index).within(least - step, most + step);
            }
            if (narrower.isEmpty() || !narrower.limits().isEmpty()) {
                return;
            }
            ends.set(index, narrower);
            after = narrower;
        }
    }

    private void doubt(RecordDoubt.Kind kind, int draw, String subject) {
        Optional<Integer> recordLine = line.draw(draw).recordLine();
        // No reason can say which container was meant; only the missing numbers can.
        boolean isExplained = kind != RecordDoubt.Kind.READING_UNCLEAR
                && recordLine.map(explained::get).orElse(false);
        doubts.add(new RecordDoubt(kind, recordLine.orElse(-1), isExplained, subject));
    }
}

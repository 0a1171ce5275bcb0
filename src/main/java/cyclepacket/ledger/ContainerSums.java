package cyclepacket.ledger;

import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.List;
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
    private final List<Ends> ends = new ArrayList<>();
    private final List<RecordDoubt> doubts = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private final List<Integer> proven = new ArrayList<>();
    private final List<Integer> unknowns = new ArrayList<>();
    private final long[] slack;
    private final List<Boolean> explained;
    private int nextReading;

    /** One number that was read: on which setting, and the totals it allows. */
    private record Reading(int draw, long least, long most, boolean isExact) {}

    /**
     * @param step the smallest distance between two settings, in thousandths
     * @param explained whether the n-th line of the record carries a reason and a name
     */
    ContainerSums(Timeline line, List<Container> containers, Dose step, List<Boolean> explained) {
        this.line = line;
        this.containers = List.copyOf(containers);
        this.step = step.milliUnits();
        this.explained = List.copyOf(explained);
        slack = new long[containers.size() + 1];
        for (int index = 0; index < line.size(); index++) {
            collect(index, line.draw(index));
        }
        solve();
    }

    private void collect(int index, Draw draw) {
        if (draw.provesNoEnd()) {
            proven.add(index);
        }
        if (!draw.unknown().isZero()) {
            unknowns.add(index);
        }
        for (Draw.Stop stop : draw.stops()) {
            long total = stop.total().milliUnits();
            long least = stop.isConfirmed() ? total : draw.before().milliUnits();
            long most = stop.isConfirmed() ? total : Math.max(draw.after().milliUnits(), least);
            readings.add(new Reading(index, least, most, stop.isConfirmed()));
        }
    }

    /** The ends of every container, in loading order. */
    List<Ends> ends() {
        return List.copyOf(ends);
    }

    List<RecordDoubt> doubts() {
        return List.copyOf(doubts);
    }

    private void solve() {
        Ends before = Ends.start();
        for (int index = 0; index < containers.size(); index++) {
            Ends forward = forward(index, before);
            Ends solved = withRecord(index, before, forward);
            ends.add(solved);
            before = solved;
        }
        if (nextReading < readings.size()) {
            Reading extra = readings.get(nextReading);
            doubt(RecordDoubt.Kind.NO_CONTAINER_LEFT, extra.draw(), line.draw(extra.draw()).date().toString());
        }
    }

    /** A setting of which nobody knows how much was drawn adds its whole size to the most of the container in use. */
    private Ends forward(int index, Ends before) {
        Container container = containers.get(index);
        long least = container.least().milliUnits();
        long most = container.most().milliUnits();
        Ends forward = before.next(least, most, container.opened(), line);
        while (!unknowns.isEmpty() && isInUse(forward, unknowns.get(0))) {
            most = Math.addExact(most, line.draw(unknowns.remove(0)).unknown().milliUnits());
            forward = before.next(least, most, container.opened(), line);
        }
        return forward;
    }

    private boolean isInUse(Ends forward, int unknown) {
        boolean stoppedEarlier =
                nextReading < readings.size() && readings.get(nextReading).draw() <= unknown;
        return !stoppedEarlier && forward.max() >= line.draw(unknown).before().milliUnits();
    }

    private Ends withRecord(int index, Ends before, Ends forward) {
        slack[index] = slackOf(before, forward);
        if (nextReading < readings.size() && canBe(readings.get(nextReading), forward)) {
            return read(index, before, forward, readings.get(nextReading++));
        }
        Ends left = forward.without(proven, line);
        if (!left.empty().isEmpty() || !left.limits().isEmpty()) {
            return left;
        }
        return neverEnded(forward);
    }

    /** What nobody saw drawn while this container may have been in use: its fill may be misjudged by so much. */
    private long slackOf(Ends before, Ends forward) {
        long sum = 0;
        for (int index = 0; index < line.size(); index++) {
            Draw draw = line.draw(index);
            boolean mayBeInUse = before.min() < draw.after().milliUnits()
                    && forward.max() >= draw.before().milliUnits();
            sum = Math.addExact(sum, mayBeInUse ? draw.unknown().milliUnits() : 0);
        }
        return sum;
    }

    /** A container that surely ran dry earlier, on an evening when nobody looked, is not the one that was read. */
    private boolean canBe(Reading reading, Ends forward) {
        long start = line.draw(reading.draw()).before().milliUnits();
        return !forward.empty().isEmpty() && forward.empty().max() + step >= start;
    }

    private Ends neverEnded(Ends forward) {
        long beyond = forward.max();
        int contradiction = -1;
        for (int index : proven) {
            if (line.start(index) <= beyond && beyond < line.endExclusive(index)) {
                contradiction = index;
                beyond = line.endExclusive(index);
            }
        }
        if (contradiction >= 0) {
            doubt(
                    RecordDoubt.Kind.NO_END_WRITTEN,
                    contradiction,
                    line.draw(contradiction).after().toString());
        }
        return new Ends(Spans.of(beyond, beyond), new TreeMap<>(), OptionalInt.empty());
    }

    private Ends read(int index, Ends before, Ends forward, Reading reading) {
        Container container = containers.get(index);
        long leastFill = reading.least() - before.max();
        long mostFill = reading.most() - before.min();
        long least = container.least().milliUnits();
        long most = Math.addExact(container.most().milliUnits(), slack[index]);
        Spans allowed = Spans.of(reading.least(), reading.most());
        Spans possible = before.all().plus(least, most).between(reading.least(), reading.most());
        boolean fits = !possible.isEmpty();
        boolean nearly = mostFill >= least - step && leastFill <= most + step;
        if (!fits && !nearly) {
            doubt(RecordDoubt.Kind.FILL_IMPOSSIBLE, reading.draw(), fillText(container, leastFill, mostFill));
        }
        noteUseAfterLimit(before, container, reading);
        Ends read = new Ends(
                fits && !reading.isExact() ? possible : allowed, new TreeMap<>(), OptionalInt.of(reading.draw()));
        if (fits || nearly) {
            tighten(index - 1, read, least, most, fits ? 0 : step);
        }
        return read;
    }

    private static String fillText(Container container, long leastFill, long mostFill) {
        Dose low = new Dose(Math.max(leastFill, 0), container.label().unit());
        Dose high = new Dose(Math.max(mostFill, 0), container.label().unit());
        String fill = low.equals(high) ? low.toString() : low + " to " + high;
        return "container " + container.number() + ": " + fill + " from one labelled " + container.label()
                + " (" + container.least() + " to " + container.most() + ")";
    }

    private void noteUseAfterLimit(Ends before, Container container, Reading reading) {
        for (int index = 0; index <= reading.draw(); index++) {
            boolean latestOpening = before.max() < line.endExclusive(index);
            if (latestOpening) {
                OptionalInt cut = line.firstPastLimit(
                        container.opened().orElse(line.draw(index).date()));
                if (cut.isPresent() && cut.getAsInt() <= reading.draw()) {
                    doubt(
                            RecordDoubt.Kind.PAST_IN_USE,
                            reading.draw(),
                            "container " + container.number() + " on "
                                    + line.draw(reading.draw()).date());
                }
                return;
            }
        }
    }

    /** The containers before a reading gave what is left of the total once this one's possible fills are taken off. */
    private void tighten(int index, Ends after, long least, long most, long tolerance) {
        if (index < 0 || ends.get(index).isKnown()) {
            return;
        }
        Ends narrower = ends.get(index).within(after.min() - most - tolerance, after.max() - least + tolerance);
        boolean hasAny = !narrower.empty().isEmpty() || !narrower.limits().isEmpty();
        if (!hasAny) {
            return;
        }
        ends.set(index, narrower);
        if (narrower.limits().isEmpty()) {
            Container container = containers.get(index);
            tighten(
                    index - 1,
                    narrower,
                    container.least().milliUnits(),
                    Math.addExact(container.most().milliUnits(), slack[index]),
                    tolerance);
        }
    }

    private void doubt(RecordDoubt.Kind kind, int draw, String subject) {
        Optional<Integer> recordLine = line.draw(draw).recordLine();
        boolean isExplained = recordLine.map(explained::get).orElse(false);
        doubts.add(new RecordDoubt(kind, recordLine.orElse(-1), isExplained, subject));
    }
}
